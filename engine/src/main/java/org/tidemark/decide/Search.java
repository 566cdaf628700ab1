package org.tidemark.decide;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a case in a region that lies in none of a set of boxes ("dodges" them all). Complete:
 * when it finds none, there is none.
 *
 * <p>Each box still in the way must be left by at least one of its findings. A box with one finding
 * left to leave it by is left at once; when every box has a choice, the search tries the ways to
 * leave the box with the fewest. What a try changed is noted on a trail and taken back when the try
 * fails, so that nothing is ever copied.
 */
public final class Search {
  /** What came of a search. */
  public enum Result {
    FOUND,
    NONE,
    /** The budget was spent first. Never taken for either of the others. */
    UNDECIDED
  }

  private static final int LEFT_ALREADY = Integer.MAX_VALUE;

  private final Obstacles obstacles;
  private final long[] region;

  /**
   * The boxes in the way are the first {@code inTheWay} of these; {@code at} says where each is.
   */
  private final int[] boxes;

  private final int[] at;
  private int inTheWay;

  /** Each narrowing of a finding, with the cells that it had before. */
  private int[] narrowed;

  private long[] before;
  private int trail;

  /** How much of the trail has been looked at by the boxes that it concerns. */
  private int followed;

  private int steps;

  /** Nothing is left of the region, for all that is entered so far. */
  private boolean empty;

  private long @Nullable [] witness;

  private Search(long[] region, Obstacles obstacles, int steps) {
    this.obstacles = obstacles;
    this.region = region.clone();
    this.boxes = new int[obstacles.count()];
    this.at = new int[obstacles.count()];
    for (int b = 0; b < boxes.length; b++) {
      boxes[b] = b;
      at[b] = b;
    }
    this.narrowed = new int[2 * region.length];
    this.before = new long[2 * region.length];
    this.steps = steps;
    this.empty = Arrays.stream(region).anyMatch(cells -> cells == 0);
  }

  /**
   * Searches a region.
   *
   * @param region the cells that each finding may have; not changed
   * @param dodge the boxes to lie in none of
   * @param budget how many steps it may take
   */
  public static Search in(long[] region, List<Box> dodge, int budget) {
    return in(region, Obstacles.of(dodge), budget);
  }

  /** The same, for boxes that are dodged again and again. */
  public static Search in(long[] region, Obstacles dodge, int budget) {
    Search search = over(region, dodge, budget);
    search.enter(List.of(new Layout.Run(0, dodge.count())));
    search.look();
    return search;
  }

  /**
   * A search with nothing in the way yet, for several questions about one region, each of which has
   * more in the way than the one before. They share one budget.
   */
  static Search over(long[] region, Obstacles obstacles, int budget) {
    return new Search(region, obstacles, budget);
  }

  /** What came of the latest look. */
  public Result result() {
    if (witness != null) {
      return Result.FOUND;
    }
    return steps < 0 ? Result.UNDECIDED : Result.NONE;
  }

  /** The steps that are left of its budget; none when it ended undecided. */
  int left() {
    return Math.max(0, steps);
  }

  /** The case that was found, one cell a finding. */
  public long[] witness() {
    if (witness == null) {
      throw new IllegalStateException("nothing was found");
    }
    return witness;
  }

  /** Puts boxes in the way that were not there, for good. */
  void enter(List<Layout.Run> runs) {
    runs.forEach(this::put);
    for (Layout.Run run : runs) {
      for (int b = run.from(); b < run.to() && !empty; b++) {
        empty = isInTheWay(b) && !leave(b);
      }
    }
    empty = empty || !follow();
  }

  /** Looks for a case that dodges what is in the way. */
  Result look() {
    witness = null;
    if (--steps >= 0 && !empty) {
      int mark = trail;
      int markInTheWay = inTheWay;
      solve();
      takeBack(mark, markInTheWay);
    }
    return result();
  }

  /** Looks for a case that lies in one of some boxes and dodges what is in the way. */
  Result lookIn(List<Box> some) {
    witness = null;
    for (int i = 0; i < some.size() && witness == null && !empty && --steps >= 0; i++) {
      int mark = trail;
      int markInTheWay = inTheWay;
      if (narrow(some.get(i)) && follow()) {
        solve();
      }
      takeBack(mark, markInTheWay);
    }
    return result();
  }

  /** Looks for a case that dodges these boxes too, and takes them away again. */
  Result lookBeside(List<Layout.Run> runs) {
    boolean wasEmpty = empty;
    int mark = trail;
    int stayed = inTheWay;
    enter(runs);
    look();
    takeBack(mark, stayed + runs.stream().mapToInt(Layout.Run::count).sum());
    runs.forEach(this::dropAll);
    empty = wasEmpty;
    return result();
  }

  private void dropAll(Layout.Run run) {
    for (int b = run.from(); b < run.to(); b++) {
      drop(b);
    }
  }

  private boolean narrow(Box box) {
    boolean some = true;
    for (int i = 0; i < box.size() && some; i++) {
      some = narrow(box.finding(i), box.cells(i));
    }
    return some;
  }

  private boolean solve() {
    if (inTheWay == 0) {
      witness = pick(region);
      return true;
    }
    return branch(narrowest());
  }

  /**
   * Tries each way to leave the box; a way that failed is closed for the ways after it, so that no
   * case is looked at twice.
   */
  private boolean branch(int b) {
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      int finding = obstacles.finding[side];
      if (!isInTheWay(b)) {
        return solve();
      }
      if ((region[finding] & ~obstacles.cells[side]) != 0) {
        if (--steps < 0) {
          return false;
        }
        int mark = trail;
        int markInTheWay = inTheWay;
        if (narrow(finding, ~obstacles.cells[side]) && follow() && solve()) {
          return true;
        }
        takeBack(mark, markInTheWay);
        if (steps < 0 || !narrow(finding, obstacles.cells[side]) || !follow()) {
          return false;
        }
      }
    }
    return !isInTheWay(b) && solve();
  }

  private boolean isInTheWay(int b) {
    return at[b] < inTheWay;
  }

  /** Keeps only some of a finding's cells; false if none is left. */
  private boolean narrow(int finding, long cells) {
    long now = region[finding];
    if ((now & ~cells) != 0) {
      if (trail == narrowed.length) {
        narrowed = Arrays.copyOf(narrowed, 2 * trail);
        before = Arrays.copyOf(before, 2 * trail);
      }
      narrowed[trail] = finding;
      before[trail++] = now;
      region[finding] = now & cells;
    }
    return region[finding] != 0;
  }

  private void takeBack(int mark, int markInTheWay) {
    while (trail > mark) {
      trail--;
      region[narrowed[trail]] = before[trail];
    }
    followed = trail;
    inTheWay = markInTheWay;
  }

  /** Lets every box see what was narrowed; false if one of them cannot be left any more. */
  private boolean follow() {
    while (followed < trail) {
      int finding = narrowed[followed++];
      if (finding < obstacles.lookingAt.length && !follow(finding)) {
        return false;
      }
    }
    return true;
  }

  private boolean follow(int finding) {
    for (int side : obstacles.lookingAt[finding]) {
      int b = obstacles.box[side];
      if (isInTheWay(b)) {
        long left = region[finding];
        if ((left & obstacles.cells[side]) == 0) {
          drop(b);
        } else if ((left & ~obstacles.cells[side]) == 0 && !leave(b)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Leaves a box that only one finding can leave; false if none can. */
  private boolean leave(int b) {
    int only = -1;
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      long left = region[obstacles.finding[side]];
      if ((left & obstacles.cells[side]) == 0) {
        drop(b);
        return true;
      }
      if ((left & ~obstacles.cells[side]) != 0) {
        only = only == -1 ? side : LEFT_ALREADY;
      }
    }
    if (only >= 0 && only != LEFT_ALREADY) {
      drop(b);
      return narrow(obstacles.finding[only], ~obstacles.cells[only]);
    }
    return only == LEFT_ALREADY;
  }

  /** All boxes are put before any of them is looked at, so that what is taken back is these. */
  private void put(Layout.Run run) {
    for (int b = run.from(); b < run.to(); b++) {
      swap(b, inTheWay++);
    }
  }

  private void drop(int b) {
    swap(b, --inTheWay);
  }

  private void swap(int b, int place) {
    int other = boxes[place];
    boxes[at[b]] = other;
    at[other] = at[b];
    boxes[place] = b;
    at[b] = place;
  }

  /** Of the boxes in the way, one that the fewest findings can leave. */
  private int narrowest() {
    int best = boxes[0];
    int fewest = LEFT_ALREADY;
    for (int k = 0; k < inTheWay && fewest > 2; k++) {
      int ways = ways(boxes[k]);
      if (ways < fewest) {
        fewest = ways;
        best = boxes[k];
      }
    }
    return best;
  }

  private int ways(int b) {
    int ways = 0;
    for (int side = obstacles.firstSide[b]; side < obstacles.firstSide[b + 1]; side++) {
      if ((region[obstacles.finding[side]] & ~obstacles.cells[side]) != 0) {
        ways++;
      }
    }
    return ways;
  }

  static long[] pick(long[] region) {
    long[] point = new long[region.length];
    for (int i = 0; i < region.length; i++) {
      point[i] = Long.lowestOneBit(region[i]);
    }
    return point;
  }
}
