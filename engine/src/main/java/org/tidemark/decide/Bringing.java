package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;

/**
 * Looks for the fewest findings, each with a value that it may have, that bring a case to one
 * outcome for certain. Then it takes in what other values would do as well, so that a limit shows
 * as a stretch of readings and not as one of them.
 */
final class Bringing {
  private final CellSpace space;
  private final Contrary contrary;
  private final long[] may;
  private final List<Taking> takings = new ArrayList<>();
  private final Smallest smallest;

  /**
   * What is to be found.
   *
   * @param means what it works with
   * @param wanted the outcome
   * @param base what is known whatever is chosen
   * @param kept what is known unless something chosen ends it
   * @param may the values that each finding may be found to have
   */
  Bringing(Means means, Outcome wanted, long[] base, List<Kept> kept, long[] may) {
    this.space = means.space();
    this.contrary = new Contrary(means, wanted);
    this.may = may.clone();
    for (int i = 0; i < space.size(); i++) {
      this.may[i] &= ~space.cells(i).notApplicable();
      for (long left = this.may[i]; left != 0; left &= left - 1) {
        takings.add(new Taking(i, Box.of(i, Long.lowestOneBit(left))));
      }
    }
    this.smallest = new Smallest(means, contrary, base, kept, takings);
  }

  /**
   * The fewest findings.
   *
   * @param known which findings were entered already, so that another value has to be got
   */
  Least fewest(Predicate<Finding> known) {
    Optional<BitSet> found = smallest.find();
    return smallest.put(found.map(chosen -> observations(chosen, known)));
  }

  private List<Observation> observations(BitSet chosen, Predicate<Finding> known) {
    return widened(chosen).entrySet().stream()
        .sorted(Comparator.comparing(Map.Entry::getKey))
        .map(e -> observation(e.getKey(), e.getValue(), known))
        .toList();
  }

  private Observation observation(int position, long cells, Predicate<Finding> known) {
    Cells all = space.cells(position);
    Finding finding = all.finding();
    List<Cell> some = new ArrayList<>();
    for (long left = cells; left != 0; left &= left - 1) {
      some.add(all.cell(Long.numberOfTrailingZeros(left)));
    }
    return FindingWords.seen(some)
        .map(
            seen ->
                new Observation(
                    finding.name(),
                    finding.asks(),
                    seen,
                    FindingWords.of(finding, seen),
                    finding.renew().filter(r -> known.test(finding))))
        .orElseThrow();
  }

  /** For each chosen finding all the values that do as well, as long as the others have theirs. */
  private Map<Integer, Long> widened(BitSet chosen) {
    long[] region = smallest.region(chosen);
    Map<Integer, Long> cells = new TreeMap<>();
    chosen.stream().map(t -> takings.get(t).element()).forEach(f -> cells.put(f, region[f]));
    for (Map.Entry<Integer, Long> each : cells.entrySet()) {
      each.setValue(widened(region, each.getKey()));
    }
    return cells;
  }

  private long widened(long[] region, int finding) {
    boolean grew = true;
    while (grew) {
      grew = false;
      for (long left = may[finding] & ~region[finding]; left != 0; left &= left - 1) {
        long cell = Long.lowestOneBit(left);
        if (beside(finding, region[finding], cell) && doesAsWell(region, finding, cell)) {
          region[finding] |= cell;
          grew = true;
        }
      }
    }
    return region[finding];
  }

  /** Readings are shown as one stretch, so a further one must lie beside those already there. */
  private boolean beside(int finding, long cells, long cell) {
    Cells all = space.cells(finding);
    if (!(all.cell(Long.numberOfTrailingZeros(cell)) instanceof Cell.NumberCell)) {
      return true;
    }
    long numbers = 0;
    for (int i = 0; i < all.count(); i++) {
      numbers |= all.cell(i) instanceof Cell.NumberCell ? 1L << i : 0;
    }
    long have = cells & numbers;
    return have == 0 || (have & (cell << 1 | cell >>> 1)) != 0;
  }

  private boolean doesAsWell(long[] region, int finding, long cell) {
    long[] there = region.clone();
    there[finding] = cell;
    boolean can = contrary.some(there);
    there[finding] |= region[finding];
    return can && contrary.find(there).isEmpty() && !contrary.undecided();
  }
}
