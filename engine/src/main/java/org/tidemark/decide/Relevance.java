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
  private final int[] block;
  private final Points points;
  private final Twin twin;
  private final Obstacles impossible;

  /** Nothing rules any value of the finding out, whatever the others are. */
  private final boolean hangsOnNothing;

  /** The boxes that escalate and look at what may differ, of the first of the two cases. */
  private final List<Box> escalates;

  /** The boxes that stop and look at what may differ, of the second case. */
  private final List<Box> stopsTheOther;

  /** What cannot occur in either case, then the boxes in which the second case escalates. */
  private final Obstacles otherNotEscalated;

  /**
   * What cannot occur in either case and what stops the first; behind them, where the second is
   * allowed.
   */
  private final Obstacles thisProceeds;

  private final Layout.Run stops;
  private final Layout.Run otherAllowed;

  Relevance(CompiledQuestion compiled, Points points, int finding) {
    this.points = points;
    this.compiled = compiled;
    this.finding = finding;
    this.block = compiled.block(finding);
    this.twin = new Twin(compiled, block);
    this.impossible = Obstacles.of(compiled.impossible());
    this.hangsOnNothing =
        compiled.space().impossible().stream().noneMatch(b -> b.mentions(finding));
    List<Box> escalate = compiled.boxes(Effect.ESCALATE);
    List<Box> stop = Questions.join(escalate, compiled.boxes(Effect.HOLD));
    List<Box> neither = twin.impossible();
    this.escalates = escalate.stream().filter(twin::looksAtDifference).toList();
    this.stopsTheOther = twin.second(stop.stream().filter(twin::looksAtDifference).toList());
    this.otherNotEscalated = Obstacles.of(Questions.join(neither, twin.second(escalate)));
    this.thisProceeds =
        Obstacles.of(Questions.join(neither, stop)).and(twin.second(compiled.force()));
    this.stops = new Layout.Run(0, neither.size() + stop.size());
    this.otherAllowed = new Layout.Run(stops.to(), thisProceeds.count());
  }

  int finding() {
    return finding;
  }

  /**
   * Whether the finding can change the outcome of some case of the region; undecided counts as yes,
   * so that it is asked.
   *
   * @param region what is known
   * @param possible what its cases come to
   * @param steps what the searches may take, all findings of the case together
   */
  boolean matters(long[] region, Possible possible, Steps steps) {
    if (Long.bitCount(region[finding]) < 2) {
      return false;
    }
    return possible.cases().stream().anyMatch(c -> points.flipChanges(c, finding, region))
        || (canVary(region, possible, steps)
            && (oneEscalates(region, steps) || oneProceeds(region, steps)));
  }

  /**
   * Whether what is known leaves the finding more than one value, also by way of what hangs on it.
   */
  private boolean canVary(long[] region, Possible possible, Steps steps) {
    if (hangsOnNothing && !possible.cases().isEmpty()) {
      return true;
    }
    long[] wide = compiled.withSwitches(region);
    Search one = Search.in(wide, impossible, steps.left());
    Search.Result result = steps.after(one);
    if (result != Search.Result.FOUND) {
      return result == Search.Result.UNDECIDED;
    }
    wide[finding] &= ~one.witness()[finding];
    return steps.after(Search.in(wide, impossible, steps.left())) != Search.Result.NONE;
  }

  /** One case escalates and the other does not. */
  private boolean oneEscalates(long[] region, Steps steps) {
    long[] both = twin.region(region);
    List<Box> left = escalates.stream().filter(e -> canBeLeft(e, both)).toList();
    if (left.isEmpty()) {
      return false;
    }
    Search search = Search.over(both, otherNotEscalated, steps.left());
    search.enter(List.of(new Layout.Run(0, otherNotEscalated.count())));
    search.lookIn(left);
    return steps.after(search) != Search.Result.NONE;
  }

  /** One case proceeds and the other is stopped by a rule, or has nothing that allows it. */
  private boolean oneProceeds(long[] region, Steps steps) {
    return compiled.force().stream().anyMatch(f -> oneProceeds(f, twin.region(region), steps));
  }

  private boolean oneProceeds(Box allowed, long[] both, Steps steps) {
    boolean otherNotAllowed = canBeLeft(allowed, both);
    if (!allowed.narrow(both)) {
      return false;
    }
    Search search = Search.over(both, thisProceeds, steps.left());
    search.enter(List.of(stops));
    search.lookIn(stopsTheOther);
    if (steps.after(search) == Search.Result.NONE && otherNotAllowed) {
      search.enter(List.of(otherAllowed));
      search.look();
    }
    return steps.after(search) != Search.Result.NONE;
  }

  /** Whether a case can lie in the box and another, which differs as the two may, outside it. */
  private boolean canBeLeft(Box box, long[] both) {
    for (int differs : block) {
      if ((both[differs] & ~box.cellsOf(differs)) != 0) {
        return true;
      }
    }
    return false;
  }

  /** One for each finding of the question, in asking order. */
  static List<Relevance> all(CompiledQuestion compiled, Points points) {
    List<Relevance> all = new ArrayList<>();
    for (int i = 0; i < compiled.space().size(); i++) {
      all.add(new Relevance(compiled, points, i));
    }
    return List.copyOf(all);
  }
}
