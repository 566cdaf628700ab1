package org.tidemark.decide;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a case in a region that lies in none of a set of boxes, by cutting the region in two
 * again and again, each time where the fewest boxes are cut through. A part that one box fills
 * holds no such case; a part that no box reaches is one. Complete: when it finds none, there is
 * none.
 *
 * <p>Where the boxes tile the region, as the rows of a tree do, it finds the tree again and is done
 * in two parts a box; there {@link Search} tries the ways to leave one box against all others and
 * may take very long. Where boxes overlap on many findings it is the other way round. {@link
 * Uncovered} tries both.
 */
final class CutSplit {
  private static final int CELLS = 64;

  private final Obstacles obstacles;
  private final long[] region;

  /** How many of the boxes begin at each cell of each finding, within the part looked at. */
  private final int[] begins;

  /** The same, for where they end. */
  private final int[] ends;

  /** How many boxes are narrower than the part, finding by finding. */
  private final int[] narrower;

  private int steps;
  private long @Nullable [] witness;

  private CutSplit(long[] region, Obstacles obstacles, int steps) {
    this.obstacles = obstacles;
    this.region = region.clone();
    this.begins = new int[region.length * CELLS];
    this.ends = new int[region.length * CELLS];
    this.narrower = new int[region.length];
    this.steps = steps;
  }

  /**
   * Searches a region.
   *
   * @param region the cells that each finding may have; not changed
   * @param dodge the boxes to lie in none of
   * @param budget how many parts it may look at
   */
  static CutSplit in(long[] region, Obstacles dodge, int budget) {
    CutSplit split = new CutSplit(region, dodge, budget);
    boolean some = Arrays.stream(region).noneMatch(cells -> cells == 0);
    int[] all = new int[dodge.count()];
    Arrays.setAll(all, b -> b);
    if (some) {
      split.look(all, all.length);
    }
    return split;
  }

  /** What came of it. */
  Search.Result result() {
    if (witness != null) {
      return Search.Result.FOUND;
    }
    return steps < 0 ? Search.Result.UNDECIDED : Search.Result.NONE;
  }

  /** The case that was found, one cell a finding. */
  long[] witness() {
    if (witness == null) {
      throw new IllegalStateException("nothing was found");
    }
    return witness;
  }

  /** Looks at a part that only these boxes may reach; true when the search is over. */
  private boolean look(int[] boxes, int count) {
    if (--steps < 0) {
      return true;
    }
    int[] here = new int[count];
    int left = 0;
    for (int i = 0; i < count; i++) {
      if (reaches(boxes[i])) {
        if (fills(boxes[i])) {
          return false;
        }
        here[left++] = boxes[i];
      }
    }
    if (left == 0) {
      witness = Search.pick(region);
      return true;
    }
    return cut(here, left);
  }

  private boolean reaches(int b) {
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      if ((region[obstacles.finding[side]] & obstacles.cells[side]) == 0) {
        return false;
      }
    }
    return true;
  }

  private boolean fills(int b) {
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      if ((region[obstacles.finding[side]] & ~obstacles.cells[side]) != 0) {
        return false;
      }
    }
    return true;
  }

  private boolean cut(int[] boxes, int count) {
    Cut best = best(boxes, count);
    long whole = region[best.finding];
    region[best.finding] = whole & best.below;
    boolean over = look(boxes, count);
    if (!over) {
      region[best.finding] = whole & ~best.below;
      over = look(boxes, count);
      region[best.finding] = whole;
    }
    return over;
  }

  /**
   * Where to cut.
   *
   * @param finding the finding
   * @param below the cells on the one side
   * @param through how many boxes are cut through
   * @param apart how much the numbers of boxes on the two sides differ
   */
  private record Cut(int finding, long below, int through, int apart) {
    boolean isBetterThan(Cut other) {
      return through < other.through || (through == other.through && apart < other.apart);
    }
  }

  private Cut best(int[] boxes, int count) {
    Arrays.fill(begins, 0);
    Arrays.fill(ends, 0);
    Arrays.fill(narrower, 0);
    for (int i = 0; i < count; i++) {
      note(boxes[i]);
    }
    Cut best = new Cut(-1, 0, Integer.MAX_VALUE, Integer.MAX_VALUE);
    for (int f = 0; f < region.length; f++) {
      if (narrower[f] > 0) {
        best = best(f, count, best);
      }
    }
    return best;
  }

  /** From the first to the last cell of the part that the box has: what lies between counts too. */
  private void note(int b) {
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      int f = obstacles.finding[side];
      if ((region[f] & ~obstacles.cells[side]) != 0) {
        long cells = region[f] & obstacles.cells[side];
        narrower[f]++;
        begins[f * CELLS + Long.numberOfTrailingZeros(cells)]++;
        ends[f * CELLS + CELLS - 1 - Long.numberOfLeadingZeros(cells)]++;
      }
    }
  }

  private Cut best(int f, int count, Cut soFar) {
    Cut best = soFar;
    int begun = 0;
    int ended = 0;
    long rest = region[f];
    while ((rest & (rest - 1)) != 0) {
      int cell = Long.numberOfTrailingZeros(rest);
      rest &= rest - 1;
      begun += begins[f * CELLS + cell];
      ended += ends[f * CELLS + cell];
      int through = count - narrower[f] + begun - ended;
      int apart = Math.abs(ended - (narrower[f] - begun));
      Cut cut = new Cut(f, (2L << cell) - 1, through, apart);
      best = cut.isBetterThan(best) ? cut : best;
    }
    return best;
  }
}
