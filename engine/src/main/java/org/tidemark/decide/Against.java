package org.tidemark.decide;

/** A case that comes to another outcome than the one that is wanted, and why it does. */
final class Against {
  private final long[] point;
  private final Cube why;

  Against(long[] point, Cube why) {
    this.point = point;
    this.why = why;
  }

  long[] point() {
    return point;
  }

  Cube why() {
    return why;
  }
}
