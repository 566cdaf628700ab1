package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;

/**
 * Looks for the fewest findings, each as it may be found, that bring a case to one outcome for
 * certain. Then it takes in what else would do as well, so that a limit shows as a stretch of
 * readings and not as one of them. Of a reading that may be off, all that it counts as must do.
 */
final class Bringing {
  private final Contrary contrary;
  private final Means means;
  private final List<Taking> takings = new ArrayList<>();

  /** What each taking would be found as. */
  private final List<Showing> showings = new ArrayList<>();

  private final Smallest smallest;

  /**
   * What is to be found.
   *
   * @param means what it works with
   * @param wanted the outcome
   * @param base what is known whatever is chosen
   * @param kept what is known unless something chosen ends it
   * @param may the values that each finding may have; nothing that speaks against them is found
   */
  Bringing(Means means, Outcome wanted, long[] base, List<Kept> kept, long[] may) {
    this.means = means;
    this.contrary = new Contrary(means, wanted);
    for (int i = 0; i < means.space().size(); i++) {
      for (Showing showing : Showing.all(means.space().cells(i), means.misreading())) {
        if ((showing.cells() & may[i]) != 0) {
          takings.add(new Taking(i, Box.of(i, showing.cells())));
          showings.add(showing);
        }
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
        .map(e -> observation(e.getKey(), e.getValue(), known))
        .toList();
  }

  private Observation observation(int position, BitSet shown, Predicate<Finding> known) {
    Finding finding = means.space().cells(position).finding();
    return FindingWords.seen(shown.stream().mapToObj(t -> showings.get(t).shown()).toList())
        .map(
            seen ->
                new Observation(
                    finding.name(),
                    finding.asks(),
                    finding.called(),
                    seen,
                    FindingWords.of(finding, seen),
                    finding.renew().filter(r -> known.test(finding))))
        .orElseThrow();
  }

  /** For each chosen finding all that does as well, as long as the others are as they are. */
  private SortedMap<Integer, BitSet> widened(BitSet chosen) {
    long[] region = smallest.region(chosen);
    SortedMap<Integer, BitSet> shown = new TreeMap<>();
    chosen.stream()
        .forEach(t -> shown.computeIfAbsent(takings.get(t).element(), f -> new BitSet()).set(t));
    shown.forEach((finding, some) -> widen(region, finding, some));
    return shown;
  }

  private void widen(long[] region, int finding, BitSet shown) {
    boolean grew = true;
    while (grew) {
      grew = false;
      for (int t = 0; t < takings.size(); t++) {
        if (takings.get(t).element() == finding && isFurther(t, shown) && doesAsWell(region, t)) {
          region[finding] |= showings.get(t).cells();
          shown.set(t);
          grew = true;
        }
      }
    }
  }

  /** Readings are shown as one stretch, so a further one must lie beside those already there. */
  private boolean isFurther(int taking, BitSet shown) {
    if (shown.get(taking)) {
      return false;
    }
    Showing one = showings.get(taking);
    List<Showing> numbers =
        shown.stream().mapToObj(showings::get).filter(Showing::isNumber).toList();
    return !one.isNumber() || numbers.isEmpty() || numbers.stream().anyMatch(one::isBeside);
  }

  private boolean doesAsWell(long[] region, int taking) {
    int finding = takings.get(taking).element();
    long[] there = region.clone();
    there[finding] = showings.get(taking).cells();
    boolean can = contrary.some(there);
    there[finding] |= region[finding];
    return can && contrary.find(there).isEmpty() && !contrary.undecided();
  }
}
