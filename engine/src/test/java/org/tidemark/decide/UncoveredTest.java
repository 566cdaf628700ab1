package org.tidemark.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The two searches for a case that no box takes, and both in turn, against looking at every case.
 */
class UncoveredTest {
  private static final int PLENTY = 1_000_000;

  /** A region of up to five findings with up to four cells each, and boxes in it. */
  private static final class Drawn {
    private final long[] region;
    private final List<Box> boxes = new ArrayList<>();

    Drawn(long seed) {
      Random random = new Random(seed);
      this.region = new long[1 + random.nextInt(5)];
      for (int f = 0; f < region.length; f++) {
        region[f] = 1L + random.nextInt(15);
      }
      for (int b = random.nextInt(16); b > 0; b--) {
        Map<Integer, Long> cells = new TreeMap<>();
        for (int side = 1 + random.nextInt(2); side > 0; side--) {
          cells.put(random.nextInt(region.length), 1L + random.nextInt(15));
        }
        Box.of(cells).ifPresent(boxes::add);
      }
    }

    /** Whether some case of the region lies in no box, by looking at each. */
    boolean leavesACase() {
      return leavesACase(new long[region.length], 0);
    }

    private boolean leavesACase(long[] point, int from) {
      if (from == region.length) {
        return boxes.stream().noneMatch(b -> b.contains(point));
      }
      return IntStream.range(0, Long.SIZE)
          .mapToLong(cell -> 1L << cell)
          .filter(cell -> (region[from] & cell) != 0)
          .anyMatch(
              cell -> {
                point[from] = cell;
                return leavesACase(point, from + 1);
              });
    }

    void mustBeOneOfThese(long[] found) {
      for (int f = 0; f < region.length; f++) {
        assertEquals(1, Long.bitCount(found[f]));
        assertEquals(found[f], found[f] & region[f]);
      }
      assertTrue(boxes.stream().noneMatch(b -> b.contains(found)));
    }
  }

  @Test
  void allAgreeWithLookingAtEveryCase() {
    int left = 0;
    for (long seed = 0; seed < 4_000; seed++) {
      Drawn drawn = new Drawn(seed);
      boolean some = drawn.leavesACase();
      Search.Result expected = some ? Search.Result.FOUND : Search.Result.NONE;
      Obstacles obstacles = Obstacles.of(drawn.boxes);
      long[] before = drawn.region.clone();
      Search search = Search.in(drawn.region, obstacles, PLENTY);
      CutSplit split = CutSplit.in(drawn.region, obstacles, PLENTY);
      Uncovered both = Uncovered.in(drawn.region, obstacles, PLENTY);
      assertEquals(expected, search.result(), "seed " + seed);
      assertEquals(expected, split.result(), "seed " + seed);
      assertEquals(expected, both.result(), "seed " + seed);
      if (some) {
        left++;
        List.of(search.witness(), split.witness(), both.witness()).forEach(drawn::mustBeOneOfThese);
      }
      assertArrayEquals(before, drawn.region, "a region is not changed");
    }
    assertTrue(left > 500 && left < 3_500, "both answers come up: " + left);
  }

  /** Every combination of two cells a finding. */
  private static List<Box> halves(int depth) {
    List<Box> boxes = new ArrayList<>();
    halves(depth, new TreeMap<>(), boxes);
    return boxes;
  }

  private static void halves(int depth, Map<Integer, Long> sides, List<Box> boxes) {
    if (depth == 0) {
      boxes.add(Box.of(sides).orElseThrow());
      return;
    }
    for (long half : new long[] {0b01, 0b10}) {
      Map<Integer, Long> more = new TreeMap<>(sides);
      more.put(depth - 1, half);
      halves(depth - 1, more, boxes);
    }
  }

  @Test
  void aTiledRegionIsDoneInTwoPartsABox() {
    List<Box> tiles = halves(8);
    long[] region = IntStream.range(0, 8).mapToLong(f -> 0b11).toArray();
    int parts = 2 * tiles.size() - 1;
    assertEquals(Search.Result.NONE, CutSplit.in(region, Obstacles.of(tiles), parts).result());
    assertEquals(
        Search.Result.UNDECIDED, CutSplit.in(region, Obstacles.of(tiles), parts - 1).result());
  }

  @Test
  void anEmptyRegionHoldsNoCase() {
    long[] empty = {0b11, 0};
    assertEquals(Search.Result.NONE, Uncovered.in(empty, List.of(), PLENTY).result());
    assertEquals(Search.Result.NONE, CutSplit.in(empty, Obstacles.of(List.of()), 9).result());
  }

  @Test
  void aBudgetThatIsSpentIsUndecidedAndShowsNoCase() {
    List<Box> tiles = halves(12);
    long[] region = IntStream.range(0, 12).mapToLong(f -> 0b11).toArray();
    Uncovered spent = Uncovered.in(region, tiles, 3);
    assertEquals(Search.Result.UNDECIDED, spent.result());
    assertThrows(IllegalStateException.class, spent::witness);
  }

  @Test
  void cellsAtTheTopOfALongAreCellsLikeOthers() {
    long[] region = {-1L};
    Box below = Box.of(0, Long.MAX_VALUE);
    CutSplit split = CutSplit.in(region, Obstacles.of(List.of(below)), 9);
    assertEquals(Search.Result.FOUND, split.result());
    assertEquals(Long.MIN_VALUE, split.witness()[0]);
    assertFalse(Optional.of(split.witness()).map(below::contains).orElseThrow());
  }
}
