package org.tidemark.testkit;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.model.Value;
import org.tidemark.testkit.oracle.Mentions;

/**
 * The slow, obvious reading of smallest sets: every case, every set of findings, the small ones
 * first. For small vocabularies only.
 */
public final class ReferenceReasons {
  private final EffectivePolicy policy;
  private final Set<String> lookedAt;
  private final List<Map<String, Value>> cases;
  private final Map<Map<String, Value>, Outcome> outcomes = new HashMap<>();

  public ReferenceReasons(EffectivePolicy policy) {
    this.policy = policy;
    this.cases = ReferenceEvaluator.everyCase(policy);
    EffectiveQuestion use = policy.question("use").orElseThrow();
    this.lookedAt = Mentions.of(policy, use.rules().stream().map(r -> r.given()));
    cases.forEach(c -> outcomes.put(c, ReferenceEvaluator.outcome(policy, use, c)));
  }

  /** The findings that the question looks at. */
  Set<String> lookedAt() {
    return lookedAt;
  }

  /** What the cases that fit come to. */
  public Set<Outcome> possible(Findings findings) {
    return outcomes(left(findings));
  }

  /** The smallest part of what was entered that forces an outcome. */
  public Optional<Set<String>> forcing(Findings findings, Outcome outcome) {
    for (Set<String> part : subsets(inOrder(findings.entries().keySet()))) {
      if (possible(only(findings, part)).equals(EnumSet.of(outcome))) {
        return Optional.of(part);
      }
    }
    return Optional.empty();
  }

  /**
   * The smallest set of findings with values, none of them against what was entered, that leaves
   * only cases with one outcome.
   */
  public Optional<Set<String>> settling(Findings findings, Outcome outcome) {
    List<Map<String, Value>> left = left(findings);
    for (Set<String> part : subsets(lookedAt)) {
      if (forced(left, part, outcome).findAny().isPresent()) {
        return Optional.of(part);
      }
    }
    return Optional.empty();
  }

  /**
   * The smallest set of findings that settles the case whatever they are, each with those that it
   * hangs on unless they are known for certain.
   */
  public List<String> asking(Findings findings) {
    List<Map<String, Value>> left = left(findings);
    for (Set<String> part : subsets(lookedAt)) {
      boolean whole = part.stream().allMatch(f -> part.containsAll(open(left, f)));
      if (whole && by(left, part).values().stream().allMatch(o -> o.size() == 1)) {
        return List.copyOf(part);
      }
    }
    throw new IllegalStateException("to know everything settles everything");
  }

  Set<String> open(List<Map<String, Value>> left, String finding) {
    Set<String> open = new HashSet<>();
    for (Condition.Options parent : policy.vocabulary().require(finding).applies()) {
      Set<Optional<Value>> values = new HashSet<>();
      left.forEach(c -> values.add(Optional.ofNullable(c.get(parent.finding()))));
      if (values.size() > 1) {
        open.add(parent.finding());
      }
    }
    return open;
  }

  /** The smallest set of findings to be found, or found anew, that lets it proceed. */
  public Optional<Set<String>> change(Findings findings) {
    for (Set<String> part : subsets(lookedAt)) {
      List<Map<String, Value>> left = left(stillKnown(findings, part));
      if (forced(left, part, Outcome.PROCEED)
          .anyMatch(v -> v.entrySet().stream().allMatch(e -> mayBe(findings, e)))) {
        return Optional.of(part);
      }
    }
    return Optional.empty();
  }

  /** The values of some findings that leave only cases with one outcome. */
  private Stream<Map<String, Value>> forced(
      List<Map<String, Value>> left, Set<String> part, Outcome outcome) {
    return by(left, part).entrySet().stream()
        .filter(e -> e.getKey().size() == part.size())
        .filter(e -> e.getValue().equals(EnumSet.of(outcome)))
        .map(Map.Entry::getKey);
  }

  /** What some findings may be, each time with the outcomes that are then possible. */
  private Map<Map<String, Value>, Set<Outcome>> by(
      List<Map<String, Value>> left, Set<String> part) {
    Map<Map<String, Value>, Set<Outcome>> by = new HashMap<>();
    for (Map<String, Value> each : left) {
      Map<String, Value> values = new HashMap<>(each);
      values.keySet().retainAll(part);
      by.computeIfAbsent(values, v -> EnumSet.noneOf(Outcome.class)).add(outcomes.get(each));
    }
    return by;
  }

  /** Whether a finding may come out so: it is open, is got anew, or was entered so. */
  private boolean mayBe(Findings findings, Map.Entry<String, Value> found) {
    Optional<Findings.Entry> entry = findings.entry(found.getKey());
    return entry.isEmpty() || renewed(found.getKey()) || fits(found.getValue(), entry.get().seen());
  }

  /** What is got anew is no longer known, nor is what hangs on it and can be got anew as well. */
  public Findings stillKnown(Findings findings, Set<String> part) {
    return new FoundAnew(policy.vocabulary()).stillKnown(findings, part);
  }

  boolean renewed(String name) {
    return new FoundAnew(policy.vocabulary()).renewed(name);
  }

  private static Findings only(Findings findings, Set<String> part) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>(findings.entries());
    entries.keySet().retainAll(part);
    return new Findings(entries);
  }

  /** The cases that what was entered leaves open. */
  public List<Map<String, Value>> left(Findings findings) {
    return cases.stream().filter(c -> fits(findings, c)).toList();
  }

  /** Whether a case is one that what was entered leaves open. */
  public static boolean fits(Findings findings, Map<String, Value> each) {
    return findings.entries().entrySet().stream()
        .allMatch(e -> fits(each.get(e.getKey()), e.getValue().seen()));
  }

  private static boolean fits(@Nullable Value value, Seen seen) {
    if (value instanceof Value.Amount amount) {
      return seen.from().isPresent()
          && amount.number().compareTo(seen.from().get()) >= 0
          && amount.number().compareTo(seen.to().orElseThrow()) <= 0;
    }
    return value instanceof Value.Word word && seen.options().contains(word.name());
  }

  Outcome outcome(Map<String, Value> each) {
    return Objects.requireNonNull(outcomes.get(each));
  }

  private Set<Outcome> outcomes(List<Map<String, Value>> some) {
    Set<Outcome> all = EnumSet.noneOf(Outcome.class);
    some.forEach(c -> all.add(outcomes.get(c)));
    return all;
  }

  private List<String> inOrder(Set<String> names) {
    return policy.vocabulary().findings().stream()
        .map(Finding::name)
        .filter(names::contains)
        .toList();
  }

  /** Every subset, the smaller ones first, and of one size those whose findings are asked first. */
  static List<Set<String>> subsets(Collection<String> names) {
    List<String> all = List.copyOf(names);
    return IntStream.range(0, 1 << all.size())
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer bits) -> Integer.bitCount(bits))
                .thenComparing(bits -> ~(Integer.reverse(bits) >>> 1)))
        .map(bits -> part(all, bits))
        .toList();
  }

  private static Set<String> part(List<String> all, int bits) {
    Set<String> part = new LinkedHashSet<>();
    for (int i = 0; i < all.size(); i++) {
      if ((bits & 1 << i) != 0) {
        part.add(all.get(i));
      }
    }
    return part;
  }
}
