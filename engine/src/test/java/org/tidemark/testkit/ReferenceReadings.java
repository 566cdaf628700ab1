package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.model.Value;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/**
 * The slow, obvious reading of readings that may be off: a reading says of the truth that it lies
 * within so much of it. What is to be found is tried reading by reading, not case by case.
 */
public final class ReferenceReadings {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());

  private final EffectivePolicy policy;
  private final ReferenceReasons truth;

  public ReferenceReadings(EffectivePolicy policy) {
    this.policy = policy;
    this.truth = new ReferenceReasons(policy);
  }

  private BigDecimal off(String finding) {
    return policy.howFarOff(finding).orElse(BigDecimal.ZERO);
  }

  /** What was entered, as what it says of the truth. */
  public Findings counted(Findings entered) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    entered
        .entries()
        .forEach((name, e) -> entries.put(name, new Findings.Entry(wide(name, e.seen()), NOWHERE)));
    return new Findings(entries);
  }

  private Seen wide(String name, Seen seen) {
    return new Seen(
        seen.options(),
        seen.from().map(n -> n.subtract(off(name))),
        seen.to().map(n -> n.add(off(name))));
  }

  /** What the cases come to that may be so. */
  public Set<Outcome> possible(Findings entered) {
    return truth.possible(counted(entered));
  }

  /** The cases that may be so. */
  public List<Map<String, Value>> left(Findings entered) {
    return truth.left(counted(entered));
  }

  /** The smallest part of what was entered that forces an outcome. */
  public Optional<Set<String>> forcing(Findings entered, Outcome outcome) {
    return truth.forcing(counted(entered), outcome);
  }

  /**
   * The smallest set of findings to be read, or read again, each so that it does not speak against
   * what was entered, after which only one outcome is possible.
   */
  public Optional<Set<String>> settling(Findings entered, Outcome outcome) {
    return smallest(part -> reached(entered, List.copyOf(part), entered, outcome, false));
  }

  /** The smallest set of findings to be found, or found anew, that lets it proceed. */
  public Optional<Set<String>> change(Findings entered) {
    return smallest(
        part -> reached(after(entered, part), List.copyOf(part), entered, Outcome.PROCEED, true));
  }

  /** What is left of what was entered when some findings are found anew. */
  public Findings after(Findings entered, Set<String> part) {
    return truth.stillKnown(entered, part);
  }

  private Optional<Set<String>> smallest(Predicate<Set<String>> enough) {
    return ReferenceReasons.subsets(truth.lookedAt()).stream().filter(enough).findFirst();
  }

  private boolean reached(
      Findings known, List<String> toRead, Findings entered, Outcome outcome, boolean anew) {
    if (toRead.isEmpty()) {
      return possible(known).equals(EnumSet.of(outcome));
    }
    String name = toRead.get(0);
    for (Seen read : readings(policy.vocabulary().require(name))) {
      boolean may =
          (anew && truth.renewed(name))
              || entered.entry(name).map(e -> meet(name, e.seen(), read)).orElse(true);
      Findings more = known.with(name, new Findings.Entry(read, NOWHERE));
      if (may && reached(more, toRead.subList(1, toRead.size()), entered, outcome, anew)) {
        return true;
      }
    }
    return false;
  }

  /** Everything that can be entered of a finding as one value. */
  private static List<Seen> readings(Finding finding) {
    List<Seen> all = new ArrayList<>();
    finding.domain().options().forEach(o -> all.add(Seen.option(o.name())));
    if (finding.domain() instanceof Domain.Measure m) {
      for (BigDecimal n = m.lowest(); n.compareTo(m.highest()) <= 0; n = n.add(m.step())) {
        all.add(Seen.number(n));
      }
    }
    return all;
  }

  /** Whether some value lies near enough to both. */
  private boolean meet(String name, Seen one, Seen other) {
    if (other.from().isEmpty()) {
      return one.options().containsAll(other.options());
    }
    Seen a = wide(name, one);
    Seen b = wide(name, other);
    return a.from().isPresent()
        && a.from().get().compareTo(b.to().orElseThrow()) <= 0
        && a.to().orElseThrow().compareTo(b.from().orElseThrow()) >= 0;
  }

  /**
   * The smallest set of findings that settles the case whatever is read: no two cases that come to
   * different ends can be read alike in all of them.
   */
  public Optional<List<String>> asking(Findings entered) {
    List<Map<String, Value>> left = left(entered);
    return smallest(
            part ->
                part.stream().allMatch(f -> part.containsAll(truth.open(left, f)))
                    && tellsApart(part, left))
        .map(List::copyOf);
  }

  private boolean tellsApart(Set<String> part, List<Map<String, Value>> left) {
    Map<Outcome, Set<Map<String, Value>>> seen = new EnumMap<>(Outcome.class);
    for (Map<String, Value> each : left) {
      Map<String, Value> values = new HashMap<>(each);
      values.keySet().retainAll(part);
      Outcome outcome = truth.outcome(each);
      seen.computeIfAbsent(outcome, o -> new HashSet<>()).add(values);
    }
    for (Outcome one : seen.keySet()) {
      for (Outcome other : seen.keySet()) {
        if (one != other && someAlike(part, seen.get(one), seen.get(other))) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean someAlike(
      Set<String> part, Collection<Map<String, Value>> some, Collection<Map<String, Value>> more) {
    return some.stream()
        .anyMatch(a -> more.stream().anyMatch(b -> part.stream().allMatch(f -> alike(f, a, b))));
  }

  /** Whether two cases can be read alike in a finding: some reading is near enough to both. */
  private boolean alike(String name, Map<String, Value> one, Map<String, Value> other) {
    if (one.get(name) instanceof Value.Amount a && other.get(name) instanceof Value.Amount b) {
      BigDecimal apart = a.number().subtract(b.number()).abs();
      return apart.compareTo(off(name).multiply(BigDecimal.valueOf(2))) <= 0;
    }
    return Objects.equals(one.get(name), other.get(name));
  }
}
