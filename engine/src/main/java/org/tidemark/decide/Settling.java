package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;

/** For an unfinished case: the fewest findings that would settle it, for each outcome. */
final class Settling {
  private final Means means;

  Settling(Means means) {
    this.means = means;
  }

  Routes routes(Findings findings, Set<Outcome> possible) {
    long[] region = means.space().region(findings);
    means.space().settle(region);
    return new Routes(new Asking(means, region).find(), ways(findings, possible));
  }

  /**
   * One way for each outcome that is still possible. What was entered of a reading that may be off
   * no longer counts once it is read again.
   */
  private List<Way> ways(Findings findings, Set<Outcome> possible) {
    long[] may = open(means.space().region(findings));
    Findings certain = findings;
    List<Kept> kept = new ArrayList<>();
    for (String name : findings.entries().keySet()) {
      Optional<Integer> position = means.space().position(name);
      if (position.isPresent() && means.misreading().mayBeOff(name)) {
        certain = certain.without(name);
        kept.add(new Kept(Kept.box(means.space(), findings, name), just(position.get())));
      }
    }
    long[] base = means.space().region(certain);
    List<Way> ways = new ArrayList<>();
    for (Outcome outcome : possible) {
      Bringing bringing = new Bringing(means, outcome, base, kept, may);
      ways.add(
          new Way(
              outcome,
              means.compiled().question().word(outcome),
              bringing.fewest(f -> findings.entry(f.name()).isPresent())));
    }
    return List.copyOf(ways);
  }

  private static BitSet just(int position) {
    BitSet just = new BitSet();
    just.set(position);
    return just;
  }

  /** What is known to have one value already is not found out once more. */
  private static long[] open(long[] region) {
    long[] open = region.clone();
    for (int i = 0; i < open.length; i++) {
      open[i] = Long.bitCount(open[i]) > 1 ? open[i] : 0;
    }
    return open;
  }
}
