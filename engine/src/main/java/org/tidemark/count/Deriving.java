package org.tidemark.count;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Contradictions;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/** The one door that turns a tube's record into findings. */
public final class Deriving {
  private final EffectivePolicy policy;
  private final Map<String, Reduction> reductions;

  /** How one list becomes findings. */
  @FunctionalInterface
  private interface Reduction {
    Reduced of(TubeRecord record, List<DoesNotCount> notCounted);
  }

  private Deriving(EffectivePolicy policy) {
    this.policy = policy;
    Map<String, Reduction> all = new LinkedHashMap<>();
    all.put(PhReadings.LIST, (r, not) -> new PhReadings(policy, r).reduce(not));
    all.put(Lengths.LIST, (r, not) -> new Lengths(policy, r).reduce());
    all.put(Films.LIST, (r, not) -> new Films(policy, r).reduce(not));
    this.reductions = all;
  }

  public static Deriving of(EffectivePolicy policy) {
    return new Deriving(policy);
  }

  /**
   * The findings that were entered and those that the record yields. One that is both must be the
   * same by both. A list of which the policy does not say what counts is refused.
   */
  public Loaded<Derived> derive(Findings entered, TubeRecord record) {
    Problems problems = new Problems();
    List<DoesNotCount> notCounted = new ArrayList<>();
    Set<String> speaksOf = new LinkedHashSet<>();
    Findings all = entered;
    for (Map.Entry<String, List<TubeRecord.Item>> list : record.lists().entrySet()) {
      Reduction reduction = reductions.get(list.getKey());
      if (list.getValue().isEmpty()) {
        continue; // the loader has refused it
      }
      Place place = list.getValue().get(0).place();
      if (reduction == null || !policy.counts().lists().contains(list.getKey())) {
        problems.add(notSaid(list.getKey(), place));
      } else {
        Reduced reduced = reduction.of(record, notCounted);
        reduced.speaksOf().forEach(f -> agrees(f, entered, reduced, place, problems));
        speaksOf.addAll(reduced.speaksOf());
        all = with(all, reduced, place);
      }
    }
    List<String> due = new ArrayList<>();
    if (!record.events().isEmpty()) {
      Place place = record.events().get(0).place();
      Events events = new Events(policy, entered);
      Optional<Reduced> reduced = watched(events, record, place, problems);
      if (reduced.isPresent()) {
        Reduced yields = reduced.get();
        yields.speaksOf().forEach(f -> agrees(f, entered, yields, place, problems));
        speaksOf.addAll(yields.speaksOf());
        all = with(all, yields, place);
        notCounted.addAll(events.gone());
        due.addAll(events.due());
      }
    }
    Findings derived = all;
    if (!problems.anyError()) {
      Contradictions.report(derived, policy.vocabulary(), problems);
    }
    return problems.conclude(() -> new Derived(derived, speaksOf, notCounted, due));
  }

  private Optional<Reduced> watched(
      Events events, TubeRecord record, Place place, Problems problems) {
    if (policy.care().lapses().isEmpty() || record.now().isEmpty()) {
      problems.add(notSaid(Events.KEY, place));
      return Optional.empty();
    }
    Optional<Reduced> reduced = events.reduce(record, record.now().get());
    if (reduced.isEmpty()) {
      problems.add(tooOpen(place));
    }
    return reduced;
  }

  private static Diagnostic tooOpen(Place place) {
    return Diagnostic.error(
            DiagnosticCode.TOO_MANY_WAYS,
            place.span(),
            "these events may have had more orders than can be followed")
        .help("write when they happened, at least between which times");
  }

  private void agrees(
      String finding, Findings entered, Reduced reduced, Place recorded, Problems problems) {
    Optional<Findings.Entry> typed = entered.entry(finding);
    Optional<Seen> known = Optional.ofNullable(reduced.known().get(finding));
    if (typed.isPresent() && !typed.map(Findings.Entry::seen).equals(known)) {
      problems.add(disagree(finding, typed.get(), known, recorded));
    }
  }

  /**
   * A finding that hangs on others is told only where these surely are so: to tell of a pH is to
   * tell that fluid came.
   */
  private Findings with(Findings before, Reduced reduced, Place place) {
    Findings all = before;
    for (Finding finding : policy.vocabulary().findings()) {
      Seen seen = reduced.known().get(finding.name());
      if (seen != null && hangsOnNothingOpen(finding, all)) {
        all = all.with(finding.name(), new Findings.Entry(seen, place));
      }
    }
    return all;
  }

  private static boolean hangsOnNothingOpen(Finding finding, Findings known) {
    return finding.applies().stream().allMatch(needed -> surely(needed, known));
  }

  private static boolean surely(Condition.Options needed, Findings known) {
    return known
        .entry(needed.finding())
        .map(Findings.Entry::seen)
        .filter(s -> s.from().isEmpty() && needed.options().containsAll(s.options()))
        .isPresent();
  }

  private static Diagnostic disagree(
      String finding, Findings.Entry typed, Optional<Seen> known, Place recorded) {
    String yields = known.map(s -> "yields " + s.words()).orElse("leaves it open");
    return Diagnostic.error(
            DiagnosticCode.ENTERED_TWICE,
            typed.place().span(),
            "`"
                + finding
                + "` is entered as "
                + typed.seen().words()
                + ", and the tube's record "
                + yields)
        .and(recorded.span(), "the record begins here")
        .help("delete what was entered, or correct the record");
  }

  private Diagnostic notSaid(String list, Place at) {
    return Diagnostic.error(
            DiagnosticCode.NOT_COUNTED,
            at.span(),
            "`" + policy.name() + "` does not say what counts of `" + list + "`")
        .help(
            "enter what it shows among the findings, or say under `counts` in the policy what counts");
  }
}
