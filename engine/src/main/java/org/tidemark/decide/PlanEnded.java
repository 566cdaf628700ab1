package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Axis;
import org.tidemark.model.Days;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Plan;
import org.tidemark.model.Standing;

/** After its last day a plan for one patient lets nothing proceed. */
final class PlanEnded {
  private final EffectivePolicy policy;
  private final Plan plan;

  PlanEnded(EffectivePolicy policy, Plan plan) {
    this.policy = policy;
    this.plan = plan;
  }

  Decision holds(Decision decision, String holdWord) {
    boolean proceeds = decision.outcome() == Outcome.PROCEED;
    List<Reason> reasons = new ArrayList<>(List.of(reason()));
    reasons.addAll(decision.reasons());
    List<String> next = new ArrayList<>(List.of(next()));
    next.addAll(decision.next());
    Set<Outcome> possible = new TreeSet<>(decision.possible());
    possible.remove(Outcome.PROCEED);
    possible.add(Outcome.HOLD);
    return new Decision(
        decision.question(),
        decision.asks(),
        proceeds ? Outcome.HOLD : decision.outcome(),
        proceeds ? holdWord : decision.word(),
        proceeds ? Kind.HELD : decision.kind(),
        possible,
        reasons,
        decision.doesNotCount(),
        decision.ask(),
        next,
        decision.call(),
        decision.writeDown(),
        decision.cautions(),
        decision.stamp());
  }

  private String next() {
    String below = policy.header().buildsOn().orElse("of the hospital");
    return "Use the policy " + below + ", and ask for a new plan: " + plan.by() + ".";
  }

  private Reason reason() {
    return new Reason(
        "plan-ended",
        policy.name(),
        Effect.HOLD,
        Axis.SCOPE,
        Optional.of("This plan for one patient ended on " + Days.of(plan.until()) + "."),
        Optional.empty(),
        false,
        Standing.LOCAL,
        List.of());
  }
}
