package org.tidemark.decide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.model.Running;
import org.tidemark.model.TubeOrder;

/**
 * What to do next: what runs first, then the tube, then what each rule says, the most cautious
 * first and nothing twice.
 */
final class NextSteps {
  private final EffectivePolicy policy;
  private final List<Rule> speaking;
  private final Set<String> steps = new LinkedHashSet<>();

  NextSteps(EffectivePolicy policy, List<Rule> speaking) {
    this.policy = policy;
    this.speaking = speaking;
  }

  List<String> list(Outcome outcome, Kind kind, List<String> renewals) {
    running();
    tube();
    for (Effect effect : List.of(Effect.ESCALATE, Effect.HOLD, Effect.SET_ASIDE, Effect.NOT_YET)) {
      speaking.stream()
          .filter(r -> r.effect() == effect)
          .flatMap(r -> r.says().next().stream())
          .map(policy::fill)
          .forEach(steps::add);
    }
    if (steps.isEmpty()) {
      steps.addAll(renewals);
    }
    if (steps.isEmpty() && outcome == Outcome.HOLD && kind != Kind.UNSETTLED) {
      steps.add("Do not use the tube.");
      steps.add("Ask a senior colleague and the owner of the policy.");
    }
    return new ArrayList<>(steps);
  }

  private void running() {
    speaking.stream()
        .flatMap(r -> r.running().stream())
        .min(Running::compareTo)
        .ifPresent(r -> steps.add(r.sentence()));
  }

  private void tube() {
    Set<String> givesWay = new LinkedHashSet<>();
    speaking.forEach(r -> givesWay.addAll(r.winsOver()));
    speaking.stream()
        .filter(r -> !givesWay.contains(r.name()))
        .flatMap(r -> r.tube().stream())
        .distinct()
        .map(TubeOrder::sentence)
        .forEach(steps::add);
  }
}
