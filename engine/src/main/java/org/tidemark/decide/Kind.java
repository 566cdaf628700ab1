package org.tidemark.decide;

import org.tidemark.model.Worded;

/** Why an answer is what it is; a hold comes in several kinds, since each needs other help. */
public enum Kind implements Worded {
  /** An allow rule has force and nothing blocks, whatever is still unknown. */
  PROCEEDS("Every possibility left open proceeds."),
  /** A hold rule blocks. */
  HELD("A rule holds it."),
  /** What is not known yet could still change the answer: ask. */
  UNSETTLED("What is not known yet could still change the answer."),
  /** Nothing allows yet: do what comes next. */
  NOT_YET("Nothing allows it yet."),
  /** The policy has no word for this case. */
  NOT_COVERED("The policy does not cover this case."),
  /** The case could not be settled within the budget; never taken for anything else. */
  UNDECIDED("The case could not be settled. Treat it as: do not feed."),
  /** Somebody else must act or decide. */
  ESCALATES("Somebody else must act or decide.");

  private final String sentence;

  Kind(String sentence) {
    this.sentence = sentence;
  }

  public String sentence() {
    return sentence;
  }
}
