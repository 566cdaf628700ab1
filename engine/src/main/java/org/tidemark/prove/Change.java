package org.tidemark.prove;

import org.tidemark.model.Outcome;

/**
 * Cases that two editions of a policy answer differently, for one and the same cause.
 *
 * @param question the question's name
 * @param rule the rule that fires in one of the two and not in the other
 * @param from what the first edition answers
 * @param to what the second edition answers
 * @param example one such case, in bedside words, a stretch of readings as a stretch
 */
public record Change(String question, String rule, Outcome from, Outcome to, Witness example) {}
