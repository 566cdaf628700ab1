package org.tidemark.decide;

import java.util.List;
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

  /** Whether nothing takes the force from a rule that fires. */
  boolean hasForce(CompiledRule fired) {
    for (CompiledRule each : without) {
      if (each.isSameAs(fired)) {
        return false;
      }
    }
    return true;
  }

  boolean any(Effect effect) {
    for (CompiledRule rule : rules) {
      if (rule.has(effect)) {
        return true;
      }
    }
    return false;
  }
}
