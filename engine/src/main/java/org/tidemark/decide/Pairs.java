package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/**
 * Looks for two cases of a region that agree on some findings and come to different outcomes. As
 * long as there are any, to know these findings settles nothing.
 *
 * <p>The search runs over both cases at once. That they agree on a finding is said in boxes too:
 * for each of its cells, one with that cell in the first case and another in the second, and one
 * the other way round, so that what narrows the one narrows the other. Where readings may be off,
 * all numbers are as one cell here.
 */
final class Pairs {
  private final CompiledQuestion compiled;
  private final CellSpace space;
  private final Points points;
  private final int[] second;

  /** For each finding whose readings may be off the cells that are numbers. */
  private final long[] numbers;

  private final List<Box> boxes = new ArrayList<>();
  private final List<Layout.Run> agree = new ArrayList<>();
  private final Layout.Run impossible;
  private final Layout.Run firstEscalates;
  private final Layout.Run firstStops;
  private final Layout.Run secondEscalates;
  private final Layout.Run secondForce;
  private final List<Box> proceedsAndHeld;
  private final Obstacles obstacles;
  private int left;
  private boolean undecided;

  Pairs(Means means) {
    this.compiled = means.compiled();
    this.space = means.space();
    this.points = means.points();
    this.left = means.limits().pairs();
    this.second = new int[compiled.width()];
    Arrays.setAll(second, i -> compiled.width() + i);
    this.numbers = new long[space.size()];
    Arrays.setAll(numbers, i -> numbers(space.cells(i), means.misreading()));
    List<Box> escalate = compiled.boxes(Effect.ESCALATE);
    List<Box> hold = compiled.boxes(Effect.HOLD);
    this.impossible = add(Questions.join(compiled.impossible(), second(compiled.impossible())));
    this.firstEscalates = add(escalate);
    this.firstStops = new Layout.Run(firstEscalates.from(), add(hold).to());
    this.secondEscalates = add(second(escalate));
    this.secondForce = add(second(compiled.force()));
    for (int i = 0; i < space.size(); i++) {
      agree.add(add(agree(i)));
    }
    this.proceedsAndHeld = both(compiled.force(), second(hold));
    this.obstacles = Obstacles.of(boxes);
  }

  private static long numbers(Cells cells, Misreading misreading) {
    long numbers = 0;
    for (int i = 0; i < cells.count() && misreading.mayBeOff(cells.finding().name()); i++) {
      numbers |= cells.cell(i) instanceof Cell.NumberCell ? 1L << i : 0;
    }
    return numbers;
  }

  private Layout.Run add(List<Box> more) {
    int from = boxes.size();
    boxes.addAll(more);
    return new Layout.Run(from, boxes.size());
  }

  private List<Box> second(List<Box> some) {
    return some.stream().map(b -> b.renamed(second)).toList();
  }

  private List<Box> agree(int finding) {
    long all = space.cells(finding).all();
    List<Box> agree = new ArrayList<>();
    for (long left = all; left != 0; ) {
      long alike = alike(finding, Long.lowestOneBit(left));
      left &= ~alike;
      if (alike != all) {
        agree.add(Box.of(finding, alike).and(second[finding], all & ~alike));
        agree.add(Box.of(finding, all & ~alike).and(second[finding], alike));
      }
    }
    return agree;
  }

  /**
   * What to know a finding may not tell apart from one of its cells. Where readings may be off, two
   * neighbouring numbers can be read alike, so no two are sure to be told apart by reading them
   * whatever is read.
   */
  private long alike(int finding, long cell) {
    return (numbers[finding] & cell) != 0 ? numbers[finding] : cell;
  }

  /** Where a case lies in one of some boxes and the other case in one of others. */
  private static List<Box> both(List<Box> some, List<Box> others) {
    List<Box> both = new ArrayList<>();
    for (Box one : some) {
      for (Box other : others) {
        both.add(one.and(other));
      }
    }
    return both;
  }

  /** Whether the latest search outlasted its budget; then that nothing was found says nothing. */
  boolean undecided() {
    return undecided;
  }

  /** Where two such cases differ; as little as can be made out quickly. */
  Optional<BitSet> difference(long[] region, BitSet agreed) {
    Search one = search(region, agreed);
    one.enter(List.of(secondEscalates));
    Search.Result escalates = one.lookIn(boxes(firstEscalates));
    if (escalates == Search.Result.FOUND) {
      return found(one);
    }
    left = one.left();
    Search other = search(region, agreed);
    other.enter(List.of(firstStops));
    Search.Result proceeds = other.lookIn(proceedsAndHeld);
    if (proceeds != Search.Result.FOUND) {
      other.enter(List.of(secondForce));
      proceeds = other.lookIn(compiled.force());
    }
    undecided = escalates == Search.Result.UNDECIDED || proceeds == Search.Result.UNDECIDED;
    left = other.left();
    return proceeds == Search.Result.FOUND ? found(other) : Optional.empty();
  }

  private Optional<BitSet> found(Search search) {
    undecided = false;
    left = search.left();
    return Optional.of(difference(search.witness()));
  }

  private List<Box> boxes(Layout.Run run) {
    return boxes.subList(run.from(), run.to());
  }

  private Search search(long[] region, BitSet agreed) {
    long[] wide = compiled.withSwitches(region);
    long[] both = Arrays.copyOf(wide, 2 * wide.length);
    System.arraycopy(wide, 0, both, wide.length, wide.length);
    Search search = Search.over(both, obstacles, left);
    List<Layout.Run> runs = new ArrayList<>(List.of(impossible));
    agreed.stream().forEach(f -> runs.add(agree.get(f)));
    search.enter(runs);
    return search;
  }

  private BitSet difference(long[] witness) {
    long[] one = Arrays.copyOf(witness, space.size());
    int width = compiled.width();
    long[] other = Arrays.copyOfRange(witness, width, width + space.size());
    for (int f = space.size() - 1; f >= 0; f--) {
      alike(one, other, new int[] {f});
      alike(one, other, space.block(f));
    }
    BitSet difference = new BitSet();
    for (int f = 0; f < one.length; f++) {
      difference.set(f, (alike(f, one[f]) & other[f]) == 0);
    }
    return difference;
  }

  /** Lets the cases agree on these findings as well, if they then still come to different ends. */
  private void alike(long[] one, long[] other, int[] findings) {
    long[] changed = other.clone();
    Arrays.stream(findings).forEach(f -> changed[f] = one[f]);
    Outcome outcome = points.outcome(one);
    if (points.canOccur(changed) && points.outcome(changed) != outcome) {
      System.arraycopy(changed, 0, other, 0, other.length);
    }
  }
}
