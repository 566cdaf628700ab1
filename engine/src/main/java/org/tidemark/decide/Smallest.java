package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The smallest choice of takings that brings a region to one outcome for certain. It chooses as few
 * as meet what is known to be needed, looks for a case that still comes to something else, learns
 * from it what more is needed, and chooses again. When no such case is left, no smaller choice
 * would do, since each one learnt would still speak against it.
 */
final class Smallest implements Rounds.Judge {
  private final long[] base;
  private final List<Kept> kept;
  private final List<Taking> takings;
  private final Contrary contrary;
  private final Parts parts;
  private final Fewest fewest;
  private final Rounds rounds;

  /**
   * What is to be found.
   *
   * @param means what it works with
   * @param contrary what looks for cases with another outcome
   * @param base what is known whatever is chosen
   * @param kept what is known unless something chosen ends it
   * @param takings what may be chosen
   */
  Smallest(Means means, Contrary contrary, long[] base, List<Kept> kept, List<Taking> takings) {
    this.contrary = contrary;
    this.base = base.clone();
    this.kept = List.copyOf(kept);
    this.takings = List.copyOf(takings);
    this.parts = new Parts(means.compiled());
    this.fewest = new Fewest(this.takings, means.limits().choosing());
    this.rounds = new Rounds(fewest, this, means.limits());
  }

  /** The numbers of the takings; empty if no choice does it. */
  Optional<BitSet> find() {
    return rounds.find();
  }

  /** What was found, in words; without it, that there is nothing, or that it is not known. */
  Least put(Optional<List<Observation>> found) {
    if (found.isPresent()) {
      return new Least.Found(found.get());
    }
    return rounds.spent() ? new Least.NotWorkedOut() : new Least.NoneExists();
  }

  /** The region that a choice leaves. */
  long[] region(BitSet chosen) {
    BitSet elements = elements(chosen);
    return region(chosen, kept.stream().filter(k -> k.in(elements)).toList());
  }

  private long[] region(BitSet chosen, List<Kept> entries) {
    long[] region = Taking.narrowed(base, takings, chosen);
    entries.forEach(k -> k.holds().narrow(region));
    return region;
  }

  private BitSet elements(BitSet chosen) {
    BitSet elements = new BitSet();
    chosen.stream().forEach(t -> elements.set(takings.get(t).element()));
    return elements;
  }

  @Override
  public boolean undecided() {
    return contrary.undecided();
  }

  @Override
  public boolean isEnough(BitSet chosen) {
    long[] region = region(chosen);
    List<Against> against = contrary.find(region);
    if (!against.isEmpty()) {
      against.forEach(a -> fewest.add(learnt(a)));
      return false;
    }
    if (contrary.undecided() || contrary.some(region)) {
      return true;
    }
    fewest.add(cannotBe(chosen));
    return false;
  }

  private Clause learnt(Against against) {
    BitSet groups = new BitSet();
    for (int i = 0; i < base.length; i++) {
      groups.set(parts.group(i), groups.get(parts.group(i)) || against.why().turnsOn(i));
    }
    BitSet oneOf = new BitSet();
    for (int t = 0; t < takings.size(); t++) {
      oneOf.set(t, speaksAgainst(takings.get(t).holds(), against, groups));
    }
    List<Kept> unless =
        kept.stream().filter(k -> missed(k.holds(), against.point(), groups)).toList();
    return new Clause(oneOf, unless, new BitSet());
  }

  /** Whether to know this may shut out the case, and all that come to their outcome as it does. */
  private boolean speaksAgainst(Box holds, Against against, BitSet groups) {
    return missed(holds, against.point(), groups) && !harmless(holds, against);
  }

  private boolean missed(Box holds, long[] point, BitSet groups) {
    for (int i = 0; i < holds.size(); i++) {
      if ((point[holds.finding(i)] & holds.cells(i)) == 0
          && groups.get(parts.group(holds.finding(i)))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a case like this one, with the same reason, is left when this is known. */
  private boolean harmless(Box holds, Against against) {
    int finding = holds.finding(0);
    if (holds.size() > 1 || !parts.free(finding)) {
      return false;
    }
    long same = holds.cells(0) & against.why().cells(finding);
    for (long left = same; left != 0; left &= left - 1) {
      if (parts.canBe(against.point(), finding, Long.lowestOneBit(left))) {
        return true;
      }
    }
    return false;
  }

  /**
   * A choice that no case fits is no choice, unless it also ends what was entered. Of the choice
   * and the entries only those are taken down that cannot all be so, since many another choice has
   * the same fault.
   */
  private Clause cannotBe(BitSet chosen) {
    BitSet with = (BitSet) chosen.clone();
    BitSet elements = elements(chosen);
    List<Kept> entries = new ArrayList<>(kept.stream().filter(k -> k.in(elements)).toList());
    for (int t = with.nextSetBit(0); t >= 0; t = with.nextSetBit(t + 1)) {
      with.clear(t);
      with.set(t, contrary.some(region(with, entries)));
    }
    for (int i = entries.size() - 1; i >= 0; i--) {
      Kept without = entries.remove(i);
      if (contrary.some(region(with, entries))) {
        entries.add(i, without);
      }
    }
    BitSet ends = new BitSet();
    for (int t = 0; t < takings.size(); t++) {
      int element = takings.get(t).element();
      ends.set(t, entries.stream().anyMatch(k -> k.until().get(element)));
    }
    return new Clause(ends, List.of(), with);
  }
}
