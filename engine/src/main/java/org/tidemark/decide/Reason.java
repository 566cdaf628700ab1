package org.tidemark.decide;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Axis;
import org.tidemark.model.Effect;
import org.tidemark.model.Standing;

/**
 * A rule that fires, whatever is still unknown.
 *
 * @param rule the rule's name
 * @param layer the policy that wrote it
 * @param effect what it does
 * @param about the axis that it speaks of
 * @param because why, with the numbers filled in
 * @param doesNotRuleOut what may still be so all the same
 * @param setAside whether another rule takes its force
 * @param standing how well it is backed
 * @param sources where that is published
 */
public record Reason(
    String rule,
    String layer,
    Effect effect,
    Axis about,
    Optional<String> because,
    Optional<String> doesNotRuleOut,
    boolean setAside,
    Standing standing,
    List<String> sources) {
  public Reason {
    sources = List.copyOf(sources);
  }
}
