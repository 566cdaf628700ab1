package org.tidemark.prove;

import java.util.List;
import org.tidemark.model.Outcome;

/**
 * Cases that two editions of a policy answer differently, for one and the same cause.
 *
 * @param question the question's name
 * @param rule the rule that fires in one of the two and not in the other
 * @param from what the first edition answers
 * @param to what the second edition answers
 * @param telling what makes the difference in the example: the findings that the rule looks at, and
 *     those with which the more cautious edition is never less cautious, whatever the others are
 * @param example one such case, in bedside words, a stretch of readings as a stretch
 */
public record Change(
    String question, String rule, Outcome from, Outcome to, List<String> telling, Witness example) {
  public Change {
    telling = List.copyOf(telling);
  }
}
