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
    NO_GAP("No case is left without a rule that speaks of it."),
    OUTCOME_REACHABLE("Each answer can be given in some case."),
    RULE_MATTERS("Each rule changes what is said in some case."),
    ALLOW_CAN_PROCEED("Each way to proceed lets some case proceed."),
    WORSE_NEVER_LOOSENS("Where one finding gets worse, the answer never moves towards proceed."),
    BARRED_NEVER_LOOSENS("A test that must not count never moves an answer towards proceed."),
    NOTHING_KNOWN_NEVER_PROCEEDS(
        "What is not recorded never proceeds where everything that could be recorded would not."),
    NEVER_LOOSER_THAN_FLOOR("No answer is less cautious than the floor's."),
    LIST_NEVER_LOOSER(
        "No number, lapse, ban, list or scope that a search cannot see is looser than the floor's."),
    ALWAYS("What the policy says is always so is so."),
    NEVER("What the policy says is never so is never so.");

    private final String promise;

    Kind(String promise) {
      this.promise = promise;
    }

    /** What a claim of this sort promises. */
    public String promise() {
      return promise;
    }
  }
}
