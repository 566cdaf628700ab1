package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
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
  private final int[] copy;
  private final int budget;
  private final List<Box> escalate;
  private final List<Box> stop;
  private final List<Box> otherNotEscalated;
  private final List<Box> thisProceeds;
  private final List<Box> thisProceedsOtherNotAllowed;

  Relevance(CompiledQuestion compiled, int finding, int budget) {
    this.compiled = compiled;
    this.finding = finding;
    this.block = compiled.block(finding);
    this.copy = copies(compiled.width(), block);
    this.budget = budget;
    this.escalate = compiled.boxes(Effect.ESCALATE);
    this.stop = Questions.join(escalate, compiled.boxes(Effect.HOLD));
    List<Box> both = Questions.join(compiled.impossible(), second(compiled.impossible()));
    this.otherNotEscalated = Questions.join(both, renamed(escalate));
    this.thisProceeds = Questions.join(both, stop);
    this.thisProceedsOtherNotAllowed = Questions.join(thisProceeds, renamed(compiled.force()));
  }

  /**
   * Where each finding stands in the second case: at its own place when shared, else behind all
   * others.
   */
  private static int[] copies(int width, int[] block) {
    int[] copy = new int[width];
    Arrays.setAll(copy, i -> i);
    for (int i = 0; i < block.length; i++) {
      copy[block[i]] = width + i;
    }
    return copy;
  }

  /** The boxes that say something of their own about the second case. */
  private List<Box> second(List<Box> boxes) {
    return boxes.stream().filter(b -> b.mentionsAny(block)).map(b -> b.renamed(copy)).toList();
  }

  private List<Box> renamed(List<Box> boxes) {
    return boxes.stream().map(b -> b.renamed(copy)).toList();
  }

  int finding() {
    return finding;
  }

  /**
   * Whether the finding can change the outcome of some case of the region; undecided counts as yes,
   * so that it is asked.
   */
  boolean matters(long[] region) {
    return canVary(region) && (oneEscalates(region) || oneProceeds(region));
  }

  /**
   * Whether what is known leaves the finding more than one value, also by way of what hangs on it.
   */
  private boolean canVary(long[] region) {
    if (Long.bitCount(region[finding]) < 2) {
      return false;
    }
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
      if (box.mentionsAny(block) && mayBe(region, box, otherNotEscalated)) {
        return true;
      }
    }
    return false;
  }

  /** One case proceeds and the other is stopped by a rule, or has nothing that allows it. */
  private boolean oneProceeds(long[] region) {
    List<Box> stopped =
        stop.stream().filter(b -> b.mentionsAny(block)).map(b -> b.renamed(copy)).toList();
    for (Box allowed : compiled.force()) {
      for (Box stops : stopped) {
        if (mayBe(region, List.of(allowed, stops), thisProceeds)) {
          return true;
        }
      }
      if (allowed.mentionsAny(block) && mayBe(region, allowed, thisProceedsOtherNotAllowed)) {
        return true;
      }
    }
    return false;
  }

  private boolean mayBe(long[] region, Box in, List<Box> dodge) {
    return mayBe(region, List.of(in), dodge);
  }

  private boolean mayBe(long[] region, List<Box> in, List<Box> dodge) {
    long[] both = bothCases(region);
    for (Box box : in) {
      if (!box.narrow(both)) {
        return false;
      }
    }
    return Search.in(both, dodge, budget).result() != Search.Result.NONE;
  }

  private long[] bothCases(long[] region) {
    long[] wide = compiled.withSwitches(region);
    long[] both = Arrays.copyOf(wide, wide.length + block.length);
    for (int i = 0; i < block.length; i++) {
      both[wide.length + i] = wide[block[i]];
    }
    return both;
  }

  /** One for each finding of the question, in asking order. */
  static List<Relevance> all(CompiledQuestion compiled, int budget) {
    List<Relevance> all = new ArrayList<>();
    for (int i = 0; i < compiled.space().size(); i++) {
      all.add(new Relevance(compiled, i, budget));
    }
    return List.copyOf(all);
  }
}
