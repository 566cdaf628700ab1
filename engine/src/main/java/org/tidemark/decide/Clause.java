package org.tidemark.decide;

import java.util.BitSet;
import java.util.List;

/**
 * Of these takings at least one must be chosen, since there are cases that speak against every
 * choice without them.
 *
 * @param oneOf the takings
 * @param unless while one of these is still known the cases are shut out anyway
 * @param with the cases come up only when all of these takings are chosen
 */
record Clause(BitSet oneOf, List<Kept> unless, BitSet with) {
  Clause {
    unless = List.copyOf(unless);
  }

  /** Whether a choice, and every longer one, still has to do something about it. */
  boolean open(BitSet takings, BitSet elements) {
    if (oneOf.intersects(takings) || unless.stream().anyMatch(k -> k.in(elements))) {
      return false;
    }
    BitSet missing = (BitSet) with.clone();
    missing.andNot(takings);
    return missing.isEmpty();
  }
}
