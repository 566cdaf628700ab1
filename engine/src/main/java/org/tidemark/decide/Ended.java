package org.tidemark.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Axis;
import org.tidemark.model.Days;
import org.tidemark.model.Departure;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Plan;
import org.tidemark.model.Standing;

/**
 * What a policy rests on and has ended: the plan for one patient that it is, or a departure from
 * its floor. After its last day nothing proceeds.
 */
final class Ended {
  private final EffectivePolicy policy;
  private final List<Reason> reasons = new ArrayList<>();
  private final List<String> next = new ArrayList<>();

  private Ended(EffectivePolicy policy, LocalDate today) {
    this.policy = policy;
    policy.header().control().plan().filter(p -> p.endedBefore(today)).ifPresent(this::plan);
    policy.departed().stream()
        .map(d -> d.departure())
        .filter(d -> d.endedBefore(today))
        .forEach(this::departure);
  }

  /** What has ended by that day, if anything has. */
  static Optional<Ended> by(LocalDate today, EffectivePolicy policy) {
    if (policy.header().control().plan().isEmpty() && policy.departed().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Ended(policy, today)).filter(e -> !e.reasons.isEmpty());
  }

  private void plan(Plan plan) {
    reasons.add(
        reason("plan-ended", "This plan for one patient ended on " + Days.of(plan.until()) + "."));
    String below = policy.header().buildsOn().orElse("of the hospital");
    next.add("Use the policy " + below + ", and ask for a new plan: " + plan.by() + ".");
  }

  private void departure(Departure departure) {
    reasons.add(
        reason(
            "departure-ended",
            "The departure in the "
                + departure.kind().word()
                + " `"
                + departure.name()
                + "` ended on "
                + departure.until().map(Days::of).orElse("")
                + "."));
    next.add(
        "Ask for the policy without it, or a new approval: "
            + departure.approvedBy().orElse(policy.header().owner())
            + ".");
  }

  private Reason reason(String name, String because) {
    return new Reason(
        name,
        policy.name(),
        Effect.HOLD,
        Axis.SCOPE,
        Optional.of(because),
        Optional.empty(),
        false,
        Standing.LOCAL,
        List.of());
  }

  /** What of these is still possible: a hold stands in for whatever would proceed. */
  static Set<Outcome> withoutProceeding(Set<Outcome> possible) {
    Set<Outcome> left = EnumSet.noneOf(Outcome.class);
    possible.forEach(o -> left.add(o == Outcome.PROCEED ? Outcome.HOLD : o));
    return left;
  }

  /**
   * The answer without proceeding. Where only a hold is left, it is settled, and nothing is asked.
   */
  Decision holds(Decision decision, String holdWord) {
    Set<Outcome> possible = withoutProceeding(decision.possible());
    boolean held = decision.kind() != Kind.UNDECIDED && possible.equals(Set.of(Outcome.HOLD));
    return new Decision(
        decision.question(),
        decision.asks(),
        held ? Outcome.HOLD : decision.outcome(),
        held ? holdWord : decision.word(),
        held ? Kind.HELD : decision.kind(),
        possible,
        join(reasons, decision.reasons()),
        decision.doesNotCount(),
        decision.countsAs(),
        held ? List.of() : decision.ask(),
        join(next, decision.next()),
        decision.call(),
        decision.writeDown(),
        decision.cautions(),
        decision.stamp());
  }

  private static <T> List<T> join(List<T> some, List<T> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }
}
