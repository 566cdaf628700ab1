package org.tidemark.decide;

import java.util.List;

/** The fewest findings that settle a case whatever they show, if there are any. */
public sealed interface ToAsk {
  /**
   * There are none fewer.
   *
   * @param needs in asking order; what hangs on another is to be asked only where it applies
   */
  record Found(List<Need> needs) implements ToAsk {
    public Found {
      needs = List.copyOf(needs);
    }
  }

  /** None do for certain: a reading that may be off can leave the answer open whatever is known. */
  record NoneExists() implements ToAsk {}

  /** The budget was spent first. Never taken for either of the others. */
  record NotWorkedOut() implements ToAsk {}
}
