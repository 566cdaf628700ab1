package org.tidemark.decide;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.tidemark.model.Findings;

/**
 * What was entered and stays known as long as none of some elements is chosen: a reading is no
 * longer known once the sample that it came from is drawn again.
 *
 * @param holds where the case lies while it is known
 * @param until the elements that end it
 */
record Kept(Box holds, BitSet until) {
  boolean in(BitSet elements) {
    return !until.intersects(elements);
  }

  /** What one entry says by itself. */
  static Box box(CellSpace space, Findings findings, String name) {
    long[] everything = space.everything();
    long[] region = space.region(Findings.NONE.with(name, findings.entry(name).orElseThrow()));
    Map<Integer, Long> cells = new TreeMap<>();
    for (int i = 0; i < region.length; i++) {
      if (region[i] != everything[i]) {
        cells.put(i, region[i]);
      }
    }
    return Box.of(cells).orElseThrow();
  }
}
