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
public record CompiledRule(Rule rule, List<Box> boxes) {
  /** How the names begin of the rules that keep a policy within its scope. */
  public static final String OUTSIDE_SCOPE = ImpliedRules.OUTSIDE_SCOPE;

  public CompiledRule {
    boxes = List.copyOf(boxes);
  }

  public boolean has(Effect effect) {
    return rule.effect() == effect;
  }

  /**
   * Whether this is not a rule that anybody wrote, but the hold on a question with something still
   * unspoken of.
   */
  public boolean isSilence() {
    return rule.name().startsWith(ImpliedRules.NOT_SPOKEN_OF);
  }

  public boolean fires(long[] point) {
    return boxes.stream().anyMatch(b -> b.contains(point));
  }
}
