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

  /** A rule is known by its name, which no other of its question has. */
  boolean isSameAs(CompiledRule other) {
    return rule.name().equals(other.rule.name());
  }

  /** Whether this rule, where it holds, takes the force from an allow rule. */
  boolean setsAside(CompiledRule allow) {
    return has(Effect.SET_ASIDE) && rule.which().contains(allow.rule().name());
  }

  public boolean fires(long[] point) {
    for (Box box : boxes) {
      if (box.contains(point)) {
        return true;
      }
    }
    return false;
  }
}
