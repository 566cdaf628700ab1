package org.tidemark.decide;

import java.util.List;

/**
 * Why a case comes to its outcome: for a few findings, the values that they may have without its
 * coming to another. Whatever the other findings are, the reason stands.
 */
final class Cube {
  private final long[] everything;
  private final long[] cells;

  Cube(long[] everything) {
    this.everything = everything;
    this.cells = everything.clone();
  }

  /** The reason needs the case to stay in a box. */
  void inside(Box box) {
    for (int i = 0; i < box.size(); i++) {
      if (box.finding(i) < cells.length) {
        cells[box.finding(i)] &= box.cells(i);
      }
    }
  }

  /** The reason needs the case to stay outside of boxes that it lies in none of. */
  void outside(List<Box> boxes, long[] point) {
    for (Box box : boxes) {
      if (!shutOut(box)) {
        shutOut(box, point);
      }
    }
  }

  private boolean shutOut(Box box) {
    for (int i = 0; i < box.size(); i++) {
      if ((cells[box.finding(i)] & box.cells(i)) == 0) {
        return true;
      }
    }
    return false;
  }

  /** By a finding that the reason turns on already, if there is one. */
  private void shutOut(Box box, long[] point) {
    int by = -1;
    for (int i = 0; i < box.size(); i++) {
      boolean leaves = (point[box.finding(i)] & box.cells(i)) == 0;
      if (leaves && (by < 0 || turnsOn(box.finding(i)))) {
        by = i;
      }
    }
    cells[box.finding(by)] &= ~box.cells(by);
  }

  boolean turnsOn(int finding) {
    return cells[finding] != everything[finding];
  }

  long cells(int finding) {
    return cells[finding];
  }
}
