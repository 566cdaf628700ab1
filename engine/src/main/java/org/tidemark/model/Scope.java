package org.tidemark.model;

import java.util.List;
import java.util.Optional;
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
