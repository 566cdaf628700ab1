package org.tidemark.prove;

import java.util.Optional;

/**
 * A sentence about every case of a question.
 *
 * @param kind what sort of claim it is
 * @param question the question's name
 * @param subject the rule or finding that it is about, if it is about one
 * @param sentence the claim in plain words
 */
public record Claim(Kind kind, String question, Optional<String> subject, String sentence) {
  /** The sorts of claims, each with what it promises. */
  public enum Kind implements org.tidemark.model.Worded {
    /** No case is left without a rule that speaks of it. */
    NO_GAP,
    /** Each answer can be given in some case. */
    OUTCOME_REACHABLE,
    /** Each rule changes what is said in some case. */
    RULE_MATTERS,
    /** Each way to proceed lets some case proceed. */
    ALLOW_CAN_PROCEED,
    /** Where one finding gets worse, the answer never moves towards proceed. */
    WORSE_NEVER_LOOSENS,
    /** A test that must not count never moves an answer towards proceed. */
    BARRED_NEVER_LOOSENS,
    /** What is not recorded never proceeds where everything that could be recorded would not. */
    NOTHING_KNOWN_NEVER_PROCEEDS,
    /** No answer is less cautious than the floor's. */
    NEVER_LOOSER_THAN_FLOOR
  }
}
