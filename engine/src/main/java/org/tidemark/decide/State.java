package org.tidemark.decide;

import org.tidemark.model.Outcome;

/**
 * What a single, fully known case comes to. Three of them are holds, told apart because the help
 * they need differs.
 */
public enum State {
  /** An allow rule has force and nothing blocks. */
  PROCEED(Outcome.PROCEED),
  /** A hold rule blocks. */
  HELD(Outcome.HOLD),
  /** Nothing allows, and some rule says what to do first. */
  NOT_YET(Outcome.HOLD),
  /** Nothing allows and no rule has a word for it. */
  NOT_COVERED(Outcome.HOLD),
  /** An escalate rule fires. */
  ESCALATE(Outcome.ESCALATE);

  private final Outcome outcome;

  State(Outcome outcome) {
    this.outcome = outcome;
  }

  public Outcome outcome() {
    return outcome;
  }
}
