package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The smallest choice of takings that meets every clause known so far. Clauses are added until
 * nothing speaks against the choice; then it is the smallest there is.
 */
final class Fewest {
  private final List<Taking> takings;
  private final List<Clause> clauses = new ArrayList<>();
  private int budget;
  private int size;
  private boolean cutShort;
  private final BitSet chosen = new BitSet();
  private final BitSet elements = new BitSet();
  private final BitSet closed = new BitSet();

  /** For each taking the clauses that it meets. */
  private final List<BitSet> meets = new ArrayList<>();

  /** The takings that only a longer clause may come up with. */
  private final BitSet opening = new BitSet();

  /** The takings that no other of the same element does as well as. */
  private final BitSet worth = new BitSet();

  Fewest(List<Taking> takings, int budget) {
    this.takings = takings;
    this.budget = budget;
    takings.forEach(t -> meets.add(new BitSet()));
  }

  void add(Clause clause) {
    clause.oneOf().stream().forEach(t -> meets.get(t).set(clauses.size()));
    opening.or(clause.with());
    clauses.add(clause);
  }

  /** Whether the budget is spent; then an empty answer says nothing. */
  boolean spent() {
    return budget < 0;
  }

  /** A smallest choice; empty when there is none, or when the budget was spent first. */
  Optional<BitSet> choice() {
    weigh();
    do {
      start();
      cutShort = false;
      if (place(size)) {
        return Optional.of(copy(chosen));
      }
      size++;
    } while (cutShort && !spent());
    return Optional.empty();
  }

  /**
   * Of the smallest choices the one that takes what comes first: the first element that any of them
   * has, then the next that goes with it. Asked after a choice was found.
   */
  BitSet first(BitSet found) {
    BitSet best = found;
    int learnt = clauses.size();
    for (BitSet element : elementsWorth()) {
      start();
      clauses.add(new Clause(element, List.of(), new BitSet()));
      if (place(size)) {
        best = copy(chosen);
      } else {
        clauses.remove(clauses.size() - 1);
      }
    }
    clauses.subList(learnt, clauses.size()).clear();
    return best;
  }

  /** The takings of each element that are worth trying. */
  private Collection<BitSet> elementsWorth() {
    Map<Integer, BitSet> all = new TreeMap<>();
    worth.stream()
        .forEach(t -> all.computeIfAbsent(takings.get(t).element(), e -> new BitSet()).set(t));
    return all.values();
  }

  private void start() {
    chosen.clear();
    elements.clear();
    closed.clear();
  }

  private static BitSet copy(BitSet bits) {
    return (BitSet) bits.clone();
  }

  /** What another value of the same finding does as well need not be tried. */
  private void weigh() {
    worth.clear();
    for (int t = 0; t < takings.size(); t++) {
      worth.set(t, !meets.get(t).isEmpty() && !outdone(t));
    }
  }

  private boolean outdone(int t) {
    for (int other = 0; other < takings.size(); other++) {
      if (other != t
          && takings.get(other).element() == takings.get(t).element()
          && !opening.get(other)
          && meetsAll(other, t)
          && (other < t || !meetsAll(t, other))) {
        return true;
      }
    }
    return false;
  }

  /** Whether one taking meets all that another meets. */
  private boolean meetsAll(int one, int other) {
    BitSet more = copy(meets.get(other));
    more.andNot(meets.get(one));
    return more.isEmpty();
  }

  private boolean place(int left) {
    if (--budget < 0) {
      return false;
    }
    Optional<BitSet> narrowest = narrowest();
    if (narrowest.isEmpty()) {
      return true;
    }
    if (narrowest.get().isEmpty()) {
      return false;
    }
    if (left < atLeast(left)) {
      cutShort = true;
      return false;
    }
    return branch(narrowest.get(), left);
  }

  /** Tries each taking of a clause; one that failed is closed for those after it. */
  private boolean branch(BitSet oneOf, int left) {
    for (int t = oneOf.nextSetBit(0); t >= 0; t = oneOf.nextSetBit(t + 1)) {
      choose(t, true);
      if (place(left - 1)) {
        return true;
      }
      choose(t, false);
      closed.set(t);
    }
    closed.andNot(oneOf);
    return false;
  }

  private void choose(int taking, boolean yes) {
    chosen.set(taking, yes);
    elements.set(takings.get(taking).element(), yes);
  }

  /** The open clause with the fewest takings that may still be chosen. */
  private Optional<BitSet> narrowest() {
    Optional<BitSet> best = Optional.empty();
    int fewest = Integer.MAX_VALUE;
    for (Clause clause : clauses) {
      if (clause.open(chosen, elements)) {
        BitSet may = may(clause);
        if (may.cardinality() < fewest) {
          fewest = may.cardinality();
          best = Optional.of(may);
        }
      }
    }
    return best;
  }

  private BitSet may(Clause clause) {
    BitSet may = copy(clause.oneOf());
    may.and(worth);
    may.andNot(closed);
    for (int t = may.nextSetBit(0); t >= 0; t = may.nextSetBit(t + 1)) {
      may.set(t, !elements.get(takings.get(t).element()));
    }
    return may;
  }

  /** At least so many more must be chosen: open clauses that share no element need one each. */
  private int atLeast(int enough) {
    BitSet met = new BitSet();
    int count = 0;
    for (Clause clause : clauses) {
      if (count > enough) {
        return count;
      }
      if (clause.open(chosen, elements)) {
        BitSet needs = new BitSet();
        may(clause).stream().forEach(t -> needs.set(takings.get(t).element()));
        if (!needs.intersects(met)) {
          met.or(needs);
          count++;
        }
      }
    }
    return count;
  }
}
