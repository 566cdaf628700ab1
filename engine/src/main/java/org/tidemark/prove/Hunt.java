package org.tidemark.prove;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tidemark.decide.Box;
import org.tidemark.decide.Obstacles;
import org.tidemark.decide.Search;
import org.tidemark.decide.Uncovered;

/**
 * Looks for a case that would refute a claim, in one place after another. What is found is turned
 * into a witness at once; a place that could not be settled keeps the claim from ever being called
 * proved.
 */
final class Hunt {
  private final int budget;
  private final Function<long[], Witness> witness;
  private Optional<Witness> found = Optional.empty();
  private boolean undecided;

  Hunt(int budget, Function<long[], Witness> witness) {
    this.budget = budget;
    this.witness = witness;
  }

  /**
   * Looks in the part of a region that lies in all of some boxes, for a case that dodges others.
   */
  Hunt look(long[] region, List<Box> in, Obstacles dodge) {
    return look(region, in, () -> dodge);
  }

  /** The same for a part; what it dodges is laid out only if anything of it lies in the region. */
  Hunt look(long[] region, Part part) {
    return look(region, part.in(), () -> Obstacles.of(part.dodge()));
  }

  private Hunt look(long[] region, List<Box> in, Supplier<Obstacles> dodge) {
    if (found.isPresent()) {
      return this;
    }
    long[] there = region.clone();
    for (Box box : in) {
      if (!box.narrow(there)) {
        return this;
      }
    }
    note(Uncovered.in(there, dodge.get(), budget));
    return this;
  }

  private void note(Uncovered search) {
    undecided |= search.result() == Search.Result.UNDECIDED;
    if (search.result() == Search.Result.FOUND) {
      found = Optional.of(witness.apply(search.witness()));
    }
  }

  /** The verdict when finding a case refutes the claim. */
  Verdict noneMayBeFound() {
    if (found.isPresent()) {
      return new Verdict.Refuted(found.get());
    }
    return undecided ? new Verdict.Undecided(budget) : new Verdict.Proved();
  }

  /** The verdict when finding a case is what the claim promises. */
  Verdict oneMustBeFound(Witness nothing) {
    if (found.isPresent()) {
      return new Verdict.Proved();
    }
    return undecided ? new Verdict.Undecided(budget) : new Verdict.Refuted(nothing);
  }
}
