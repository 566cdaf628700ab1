package org.tidemark.decide;

import java.util.BitSet;
import java.util.Optional;

/** Chooses as few as meet what is known to be needed, and learns, until a choice is enough. */
final class Rounds {
  /** Says whether a choice is enough, and tells what is needed besides when it is not. */
  interface Judge {
    boolean isEnough(BitSet choice);

    /** Whether it could not say; then nothing that it said counts. */
    boolean undecided();
  }

  private final Fewest fewest;
  private final Judge judge;
  private final int most;
  private boolean spent;
  private BitSet first = new BitSet();

  Rounds(Fewest fewest, Judge judge, Limits limits) {
    this.fewest = fewest;
    this.judge = judge;
    this.most = limits.rounds();
  }

  /** A smallest choice that is enough; empty if none is, or if the budget was spent first. */
  Optional<BitSet> find() {
    for (int round = 0; round < most; round++) {
      Optional<BitSet> choice = fewest.choice();
      if (choice.isEmpty()) {
        spent = fewest.spent();
        return choice;
      }
      boolean enough = judge.isEnough(choice.get()) && isFirst(choice.get());
      if (enough || judge.undecided()) {
        spent = judge.undecided();
        return spent ? Optional.empty() : Optional.of(first);
      }
    }
    spent = true;
    return Optional.empty();
  }

  /** Whether the budget was spent; then that nothing was found says nothing. */
  boolean spent() {
    return spent;
  }

  /**
   * Whether no choice of the same size comes before this one. If one does that is enough too, it is
   * taken; if it is not, what speaks against it is learnt. Enough is only ever chosen among what
   * meets all that is learnt, so what comes first among that comes first of all.
   */
  private boolean isFirst(BitSet choice) {
    first = fewest.first(choice);
    return first.equals(choice) || judge.isEnough(first);
  }
}
