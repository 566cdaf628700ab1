package org.tidemark.decide;

import java.util.Arrays;
import java.util.List;

/**
 * Tells in which of many boxes a case lies. For each cell of each finding it keeps the boxes that a
 * case with that cell may lie in, as bits; what all cells of a case have in common is the answer.
 */
final class Grid {
  private final long[][][] stays;
  private final long[] all;

  Grid(CellSpace space, List<Box> boxes) {
    this.all = bits(boxes.size(), 0, boxes.size());
    this.stays = new long[space.size()][][];
    for (int f = 0; f < stays.length; f++) {
      stays[f] = new long[space.cells(f).count()][];
      Arrays.setAll(stays[f], c -> all.clone());
    }
    for (int b = 0; b < boxes.size(); b++) {
      leave(b, boxes.get(b));
    }
  }

  /** Takes the box out of every cell that lies outside it. */
  private void leave(int b, Box box) {
    for (int i = 0; i < box.size(); i++) {
      long[][] cells = stays[box.finding(i)];
      for (int c = 0; c < cells.length; c++) {
        if ((box.cells(i) & 1L << c) == 0) {
          cells[c][b >> 6] &= ~(1L << b);
        }
      }
    }
  }

  /** A row of bits of which some are set. */
  static long[] bits(int count, int from, int to) {
    long[] bits = new long[(count + 63) >> 6];
    for (int b = from; b < to; b++) {
      bits[b >> 6] |= 1L << b;
    }
    return bits;
  }

  /** The boxes in which a case lies, as bits. */
  long[] at(long[] point) {
    long[] in = all.clone();
    for (int f = 0; f < stays.length; f++) {
      long[] stay = stays[f][Long.numberOfTrailingZeros(point[f])];
      for (int w = 0; w < in.length; w++) {
        in[w] &= stay[w];
      }
    }
    return in;
  }

  static boolean common(long[] some, long[] others) {
    for (int w = 0; w < some.length; w++) {
      if ((some[w] & others[w]) != 0) {
        return true;
      }
    }
    return false;
  }
}
