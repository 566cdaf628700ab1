package org.tidemark.decide;

import java.util.List;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;

/**
 * A rule and the boxes in which it holds.
 *
 * @param rule the rule
 * @param boxes where it holds; none if it never can
 */
record CompiledRule(Rule rule, List<Box> boxes) {
  CompiledRule {
    boxes = List.copyOf(boxes);
  }

  boolean has(Effect effect) {
    return rule.effect() == effect;
  }

  boolean fires(long[] point) {
    return boxes.stream().anyMatch(b -> b.contains(point));
  }
}
