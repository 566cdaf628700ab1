package org.tidemark.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.source.Place;

/**
 * Whom and where a policy is for.
 *
 * @param covers the findings that must be so, such as the population; all of them
 * @param excludes what it is not for, and where to go instead
 * @param stated whether it is stated at all; a draft that does not say whom it is for is for nobody
 * @param place where it is written
 */
public record Scope(
    List<Condition.Options> covers, List<Exclusion> excludes, boolean stated, Place place) {
  public Scope {
    covers = List.copyOf(covers);
    excludes = List.copyOf(excludes);
  }

  public Scope(List<Condition.Options> covers, List<Exclusion> excludes, Place place) {
    this(covers, excludes, true, place);
  }

  /**
   * The part of it that is also for these.
   *
   * @param also more findings that must be so
   */
  public Scope narrowed(List<Condition.Options> also) {
    Map<String, Set<String>> all = new LinkedHashMap<>();
    covers.forEach(c -> all.put(c.finding(), c.options()));
    also.forEach(a -> all.merge(a.finding(), a.options(), Scope::both));
    return new Scope(
        all.entrySet().stream().map(e -> new Condition.Options(e.getKey(), e.getValue())).toList(),
        excludes,
        stated,
        place);
  }

  private static Set<String> both(Set<String> one, Set<String> other) {
    Set<String> both = new TreeSet<>(one);
    both.retainAll(other);
    return both;
  }

  /** Whether it is for nobody at all. */
  public boolean isEmpty() {
    return covers.stream()
        .anyMatch(
            c ->
                excludes.stream()
                    .map(Exclusion::what)
                    .filter(x -> x.finding().equals(c.finding()))
                    .flatMap(x -> x.options().stream())
                    .toList()
                    .containsAll(c.options()));
  }

  /**
   * Something that a policy is not for.
   *
   * @param what the finding that puts a patient outside
   * @param see the policy to use instead
   * @param sources where that is published
   * @param place where it is written
   */
  public record Exclusion(
      Condition.Options what, Optional<String> see, List<String> sources, Place place) {
    public Exclusion {
      sources = List.copyOf(sources);
    }
  }
}
