package org.tidemark.decide;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidemark.model.Effect;
import org.tidemark.model.Running;
import org.tidemark.model.TubeOrder;

/**
 * What to do next: what runs first, then the tube, then what each rule says, the most cautious
 * first and nothing twice.
 */
final class NextSteps {
  private static final List<Effect> ORDER =
      List.of(Effect.ESCALATE, Effect.HOLD, Effect.SET_ASIDE, Effect.NOT_YET);

  private final Wording wording;
  private final List<CompiledRule> speaking;
  private final Set<String> steps = new LinkedHashSet<>();

  NextSteps(Wording wording, List<CompiledRule> speaking) {
    this.wording = wording;
    this.speaking = speaking;
  }

  Collection<String> list() {
    running();
    tube();
    for (Effect effect : ORDER) {
      for (CompiledRule rule : speaking) {
        if (rule.has(effect)) {
          steps.addAll(wording.of(rule).next());
        }
      }
    }
    return steps;
  }

  private void running() {
    @Nullable Running first = null;
    for (CompiledRule rule : speaking) {
      Optional<Running> orders = rule.rule().running();
      if (orders.isPresent() && (first == null || orders.get().compareTo(first) < 0)) {
        first = orders.get();
      }
    }
    if (first != null) {
      steps.add(first.sentence());
    }
  }

  private void tube() {
    Set<String> givesWay = new LinkedHashSet<>();
    speaking.forEach(r -> givesWay.addAll(r.rule().winsOver()));
    for (CompiledRule rule : speaking) {
      Optional<TubeOrder> order = rule.rule().tube();
      if (order.isPresent() && !givesWay.contains(rule.rule().name())) {
        steps.add(order.get().sentence());
      }
    }
  }
}
