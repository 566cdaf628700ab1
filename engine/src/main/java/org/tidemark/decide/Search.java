package org.tidemark.decide;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a case in a region that lies in none of a set of boxes ("dodges" them all). Complete:
 * when it finds none, there is none.
 *
 * <p>Each box still in the way must be left by at least one of its findings. A box with one finding
 * left to leave it by is left at once; when every box has a choice, the search tries the ways to
 * leave the box with the fewest.
 */
public final class Search {
  /** What came of a search. */
  public enum Result {
    FOUND,
    NONE,
    /** The budget was spent first. Never taken for either of the others. */
    UNDECIDED
  }

  /** A search of an empty region: nothing is there to be found. */
  static final Search NOTHING = new Search(List.of(), 0);

  private final Box[] boxes;
  private int budget;
  private long @Nullable [] witness;

  private Search(List<Box> boxes, int budget) {
    this.boxes = boxes.toArray(new Box[0]);
    this.budget = budget;
  }

  /**
   * Searches a region.
   *
   * @param region the cells that each finding may have; not changed
   * @param dodge the boxes to lie in none of
   * @param budget how many steps it may take
   */
  public static Search in(long[] region, List<Box> dodge, int budget) {
    Search search = new Search(dodge, budget);
    int[] active = new int[dodge.size()];
    for (int i = 0; i < active.length; i++) {
      active[i] = i;
    }
    search.found = search.solve(region.clone(), active, active.length);
    return search;
  }

  private boolean found;

  public Result result() {
    if (found) {
      return Result.FOUND;
    }
    return budget < 0 ? Result.UNDECIDED : Result.NONE;
  }

  /** The case that was found, one cell a finding. */
  public long[] witness() {
    if (witness == null) {
      throw new IllegalStateException("nothing was found");
    }
    return witness;
  }

  private boolean solve(long[] region, int[] active, int count) {
    if (--budget < 0) {
      return false;
    }
    int left = propagate(region, active, count);
    if (left < 0) {
      return false;
    }
    if (left == 0) {
      witness = pick(region);
      return true;
    }
    return branch(region, active, left, boxes[narrowest(region, active, left)]);
  }

  /**
   * Leaves every box that only one finding can leave; answers how many boxes are still in the way,
   * or less than 0 when one cannot be left.
   */
  private int propagate(long[] region, int[] active, int count) {
    int left = count;
    boolean changed = true;
    while (changed) {
      changed = false;
      int kept = 0;
      for (int k = 0; k < left; k++) {
        Box box = boxes[active[k]];
        int ways = ways(box, region);
        if (ways == 0) {
          return -1;
        }
        if (ways == 1) {
          changed |= leaveByTheOnlyWay(box, region);
        } else if (ways != LEFT_ALREADY) {
          active[kept++] = active[k];
        }
      }
      left = kept;
    }
    return left;
  }

  private static final int LEFT_ALREADY = Integer.MAX_VALUE;

  /** By how many findings a box can still be left. */
  private static int ways(Box box, long[] region) {
    int ways = 0;
    for (int i = 0; i < box.size(); i++) {
      long cells = region[box.finding(i)];
      if ((cells & box.cells(i)) == 0) {
        return LEFT_ALREADY;
      }
      if ((cells & ~box.cells(i)) != 0) {
        ways++;
      }
    }
    return ways;
  }

  private static boolean leaveByTheOnlyWay(Box box, long[] region) {
    for (int i = 0; i < box.size(); i++) {
      long outside = region[box.finding(i)] & ~box.cells(i);
      if (outside != 0) {
        region[box.finding(i)] = outside;
      }
    }
    return true;
  }

  private int narrowest(long[] region, int[] active, int count) {
    int best = active[0];
    int fewest = LEFT_ALREADY;
    for (int k = 0; k < count; k++) {
      int ways = ways(boxes[active[k]], region);
      if (ways < fewest) {
        fewest = ways;
        best = active[k];
      }
    }
    return best;
  }

  /**
   * Tries each way to leave the box; a way that failed is closed for the ways after it, so that no
   * case is looked at twice.
   */
  private boolean branch(long[] region, int[] active, int count, Box box) {
    for (int i = 0; i < box.size(); i++) {
      int finding = box.finding(i);
      long outside = region[finding] & ~box.cells(i);
      if (outside != 0) {
        long[] there = region.clone();
        there[finding] = outside;
        if (solve(there, active.clone(), count)) {
          return true;
        }
        region[finding] &= box.cells(i);
      }
    }
    return false;
  }

  private static long[] pick(long[] region) {
    long[] point = new long[region.length];
    for (int i = 0; i < region.length; i++) {
      point[i] = Long.lowestOneBit(region[i]);
    }
    return point;
  }
}
