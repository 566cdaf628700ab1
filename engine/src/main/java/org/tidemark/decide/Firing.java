package org.tidemark.decide;

import java.util.List;
import java.util.stream.Stream;
import org.tidemark.model.Effect;

/**
 * The rules that fire in every case of a region.
 *
 * @param rules all of them, in the policy's order
 * @param without those of them, allow rules all, that have no force since something surely sets
 *     them aside
 */
record Firing(List<CompiledRule> rules, List<CompiledRule> without) {
  Firing {
    rules = List.copyOf(rules);
    without = List.copyOf(without);
  }

  static Firing in(
      CompiledQuestion compiled, Questions questions, long[] region, Possible possible) {
    List<CompiledRule> certain =
        compiled.rules().stream()
            .filter(r -> questions.firesForCertain(r, region, possible))
            .toList();
    List<CompiledRule> without =
        certain.stream()
            .filter(r -> r.has(Effect.ALLOW) && questions.setAsideForCertain(r, region))
            .toList();
    return new Firing(certain, without);
  }

  Stream<CompiledRule> of(Effect effect) {
    return rules.stream().filter(r -> r.has(effect));
  }
}
