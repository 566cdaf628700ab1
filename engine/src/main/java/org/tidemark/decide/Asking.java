package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Condition;

/**
 * For an unfinished case: the fewest findings that settle it once they are known, whatever they
 * are. Whatever hangs on another open finding can only be asked together with that one.
 */
final class Asking implements Rounds.Judge {
  private final CellSpace space;
  private final long[] region;
  private final Pairs pairs;
  private final Fewest fewest;
  private final Limits limits;
  private final Obstacles impossible;
  private boolean undecided;

  Asking(Means means, long[] region) {
    this.space = means.space();
    this.region = region.clone();
    this.pairs = new Pairs(means);
    this.limits = means.limits();
    this.impossible = Obstacles.of(space.impossible());
    List<Taking> takings = new ArrayList<>();
    for (int i = 0; i < space.size(); i++) {
      takings.add(new Taking(i, Box.of(i, space.cells(i).all())));
    }
    this.fewest = new Fewest(takings, limits.choosing());
    for (int i = 0; i < space.size(); i++) {
      comesWith(i);
      cannotBeSpared(i);
    }
  }

  /** Learns at once what no other finding can stand in for: two cases differ in nothing else. */
  private void cannotBeSpared(int finding) {
    BitSet all = new BitSet();
    all.set(0, space.size());
    all.clear(finding);
    learn(pairs.difference(region, all));
  }

  private void learn(Optional<BitSet> difference) {
    difference.ifPresent(d -> fewest.add(new Clause(d, List.of(), new BitSet())));
  }

  private void comesWith(int finding) {
    for (Condition.Options parent : space.cells(finding).finding().applies()) {
      int position = space.position(parent.finding()).orElseThrow();
      if (isOpen(position)) {
        fewest.add(new Clause(just(position), List.of(), just(finding)));
      }
    }
  }

  /**
   * Whether a finding may have more than one value; what was entered of a finding that hangs on it
   * may have settled it. When in doubt it is open, so that it is asked.
   */
  private boolean isOpen(int finding) {
    Search one = search(region);
    if (one.result() != Search.Result.FOUND) {
      return one.result() == Search.Result.UNDECIDED;
    }
    long[] others = region.clone();
    others[finding] &= ~one.witness()[finding];
    return search(others).result() != Search.Result.NONE;
  }

  private Search search(long[] some) {
    return Search.in(some, impossible, limits.search());
  }

  private static BitSet just(int finding) {
    BitSet just = new BitSet();
    just.set(finding);
    return just;
  }

  /** In asking order. */
  ToAsk find() {
    Rounds rounds = new Rounds(fewest, this, limits);
    Optional<BitSet> found = rounds.find();
    if (found.isPresent()) {
      return new ToAsk.Found(
          found.get().stream().mapToObj(i -> Needs.of(space.cells(i).finding())).toList());
    }
    return rounds.spent() ? new ToAsk.NotWorkedOut() : new ToAsk.NoneExists();
  }

  /**
   * Learns from one pair after another, each of which also agrees on all in which those before
   * differ, so that each lesson asks for another finding. Only the first look decides whether the
   * choice is enough.
   */
  @Override
  public boolean isEnough(BitSet choice) {
    BitSet agreed = (BitSet) choice.clone();
    Optional<BitSet> difference = pairs.difference(region, agreed);
    boolean enough = difference.isEmpty();
    undecided = pairs.undecided();
    while (difference.isPresent() && !difference.get().isEmpty()) {
      learn(difference);
      agreed.or(difference.get());
      difference = pairs.difference(region, agreed);
    }
    learn(difference);
    return enough;
  }

  @Override
  public boolean undecided() {
    return undecided;
  }
}
