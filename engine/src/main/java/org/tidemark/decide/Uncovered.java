package org.tidemark.decide;

import java.util.List;

/**
 * Looks for a case in a region that lies in none of a set of boxes, with two searches that are good
 * at different things, in turn: {@link Search}, then {@link CutSplit}, then both again with more
 * steps. Either alone would be right; what one of them is lost in, the other mostly settles at
 * once.
 */
public final class Uncovered {
  private static final int FIRST_TRY = 256;

  /** A part of a cut region costs less than a step that follows all that hangs on it. */
  private static final int PARTS_A_STEP = 16;

  private static final int MORE_EACH_TIME = 4;

  private final Search.Result result;
  private final long[] witness;

  private Uncovered(Search.Result result, long[] witness) {
    this.result = result;
    this.witness = witness;
  }

  /**
   * Searches a region.
   *
   * @param region the cells that each finding may have; not changed
   * @param dodge the boxes to lie in none of
   * @param budget how many steps the first of the two searches may take in its last try
   */
  public static Uncovered in(long[] region, List<Box> dodge, int budget) {
    return in(region, Obstacles.of(dodge), budget);
  }

  /** The same, for boxes that are dodged again and again. */
  public static Uncovered in(long[] region, Obstacles dodge, int budget) {
    for (long steps = Math.min(FIRST_TRY, budget); ; steps *= MORE_EACH_TIME) {
      int tries = (int) Math.min(steps, budget);
      Search search = Search.in(region, dodge, tries);
      if (search.result() != Search.Result.UNDECIDED) {
        return new Uncovered(search.result(), found(search));
      }
      CutSplit split = CutSplit.in(region, dodge, parts(tries));
      if (split.result() != Search.Result.UNDECIDED || tries == budget) {
        return new Uncovered(split.result(), found(split));
      }
    }
  }

  private static int parts(int tries) {
    return (int) Math.min(Integer.MAX_VALUE, (long) tries * PARTS_A_STEP);
  }

  private static long[] found(Search search) {
    return search.result() == Search.Result.FOUND ? search.witness() : new long[0];
  }

  private static long[] found(CutSplit split) {
    return split.result() == Search.Result.FOUND ? split.witness() : new long[0];
  }

  /** What came of it. */
  public Search.Result result() {
    return result;
  }

  /** The case that was found, one cell a finding. */
  public long[] witness() {
    if (result != Search.Result.FOUND) {
      throw new IllegalStateException("nothing was found");
    }
    return witness.clone();
  }
}
