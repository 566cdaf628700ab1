package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Effect;

/**
 * Whether a finding can still change the answer: whether two cases of a region differ only in it,
 * and in what hangs on it, and come to different outcomes.
 *
 * <p>The search runs over both cases at once. What does not hang on the finding is shared; the rest
 * has a second copy.
 */
final class Relevance {
  private final CompiledQuestion compiled;
  private final int finding;
  private final Points points;
  private final Twin twin;
  private final int budget;
  private final List<Box> escalate;
  private final List<Box> stopsTheOther;
  private final List<Box> otherNotEscalated;
  private final List<Box> thisProceeds;
  private final List<Box> thisProceedsOtherNotAllowed;

  Relevance(CompiledQuestion compiled, Points points, int finding, int budget) {
    this.points = points;
    this.compiled = compiled;
    this.finding = finding;
    this.twin = new Twin(compiled, compiled.block(finding));
    this.budget = budget;
    this.escalate = compiled.boxes(Effect.ESCALATE);
    List<Box> stop = Questions.join(escalate, compiled.boxes(Effect.HOLD));
    this.stopsTheOther = twin.second(stop.stream().filter(twin::looksAtDifference).toList());
    this.otherNotEscalated = Questions.join(twin.impossible(), twin.second(escalate));
    this.thisProceeds = Questions.join(twin.impossible(), stop);
    this.thisProceedsOtherNotAllowed = Questions.join(thisProceeds, twin.second(compiled.force()));
  }

  int finding() {
    return finding;
  }

  /**
   * Whether the finding can change the outcome of some case of the region; undecided counts as yes,
   * so that it is asked.
   */
  boolean matters(long[] region, Possible possible) {
    if (Long.bitCount(region[finding]) < 2) {
      return false;
    }
    return possible.cases().stream().anyMatch(c -> points.flipChanges(c, finding, region))
        || (canVary(region) && (oneEscalates(region) || oneProceeds(region)));
  }

  /**
   * Whether what is known leaves the finding more than one value, also by way of what hangs on it.
   */
  private boolean canVary(long[] region) {
    long[] wide = compiled.withSwitches(region);
    Search one = Search.in(wide, compiled.impossible(), budget);
    if (one.result() != Search.Result.FOUND) {
      return one.result() == Search.Result.UNDECIDED;
    }
    wide[finding] &= ~one.witness()[finding];
    return Search.in(wide, compiled.impossible(), budget).result() != Search.Result.NONE;
  }

  /** One case escalates and the other does not. */
  private boolean oneEscalates(long[] region) {
    for (Box box : escalate) {
      if (twin.looksAtDifference(box) && mayBe(region, List.of(box), otherNotEscalated)) {
        return true;
      }
    }
    return false;
  }

  /** One case proceeds and the other is stopped by a rule, or has nothing that allows it. */
  private boolean oneProceeds(long[] region) {
    for (Box allowed : compiled.force()) {
      for (Box stops : stopsTheOther) {
        if (mayBe(region, List.of(allowed, stops), thisProceeds)) {
          return true;
        }
      }
      if (twin.looksAtDifference(allowed)
          && mayBe(region, List.of(allowed), thisProceedsOtherNotAllowed)) {
        return true;
      }
    }
    return false;
  }

  private boolean mayBe(long[] region, List<Box> in, List<Box> dodge) {
    long[] both = twin.region(region);
    for (Box box : in) {
      if (!box.narrow(both)) {
        return false;
      }
    }
    return Search.in(both, dodge, budget).result() != Search.Result.NONE;
  }

  /** One for each finding of the question, in asking order. */
  static List<Relevance> all(CompiledQuestion compiled, Points points, int budget) {
    List<Relevance> all = new ArrayList<>();
    for (int i = 0; i < compiled.space().size(); i++) {
      all.add(new Relevance(compiled, points, i, budget));
    }
    return List.copyOf(all);
  }
}
