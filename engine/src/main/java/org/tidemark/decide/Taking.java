package org.tidemark.decide;

import java.util.BitSet;
import java.util.List;

/**
 * One thing that may be known: of one element (a finding, or what was entered for one) that it lies
 * in a box. Of an element at most one taking is chosen.
 *
 * @param element the element's number
 * @param holds where the case lies once this is known
 */
record Taking(int element, Box holds) {
  /** The region that is left when some of the takings are known. */
  static long[] narrowed(long[] region, List<Taking> takings, BitSet chosen) {
    long[] there = region.clone();
    chosen.stream().forEach(t -> takings.get(t).holds().narrow(there));
    return there;
  }
}
