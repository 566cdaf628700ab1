package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/**
 * Looks at single cases: whether one can occur, what it comes to, and which rules fire in it. No
 * search, one pass over the boxes.
 */
final class Points {
  private final CellSpace space;
  private final List<Box> impossible;
  private final List<CompiledRule> rules;
  private final Grid grid;

  /** The rule of each box. */
  private final int[] rule;

  private final long[] escalate;
  private final long[] hold;
  private final long[] speaks;

  private final List<Allow> allows = new ArrayList<>();

  /** An allow rule, its boxes and those in which something sets it aside. */
  private static final class Allow {
    private final CompiledRule rule;
    private final long[] holds;
    private final long[] setAside;

    Allow(CompiledRule rule, long[] holds, long[] setAside) {
      this.rule = rule;
      this.holds = holds;
      this.setAside = setAside;
    }

    boolean hasForce(long[] in) {
      return Grid.common(holds, in) && !Grid.common(setAside, in);
    }

    boolean isSetAside(long[] in) {
      return Grid.common(holds, in) && Grid.common(setAside, in);
    }
  }

  Points(CompiledQuestion compiled) {
    this.space = compiled.space();
    this.impossible = space.impossible();
    this.rules = compiled.rules();
    List<Box> boxes = rules.stream().flatMap(r -> r.boxes().stream()).toList();
    this.grid = new Grid(space, boxes);
    this.rule = new int[boxes.size()];
    int next = 0;
    for (int r = 0; r < rules.size(); r++) {
      int end = next + rules.get(r).boxes().size();
      Arrays.fill(rule, next, end, r);
      next = end;
    }
    this.escalate = boxesOf(r -> r.has(Effect.ESCALATE));
    this.hold = boxesOf(r -> r.has(Effect.HOLD));
    this.speaks = boxesOf(r -> r.has(Effect.NOT_YET) || r.has(Effect.SET_ASIDE));
    for (CompiledRule allow : rules) {
      if (allow.has(Effect.ALLOW)) {
        allows.add(new Allow(allow, boxesOf(allow::isSameAs), boxesOf(r -> r.setsAside(allow))));
      }
    }
  }

  private long[] boxesOf(Predicate<CompiledRule> which) {
    long[] bits = Grid.bits(rule.length, 0, 0);
    for (int b = 0; b < rule.length; b++) {
      if (which.test(rules.get(rule[b]))) {
        bits[b >> 6] |= 1L << b;
      }
    }
    return bits;
  }

  /** Whether a region is a single case, one cell a finding. */
  static boolean isCase(long[] region) {
    for (long cells : region) {
      if (Long.bitCount(cells) != 1) {
        return false;
      }
    }
    return true;
  }

  boolean canOccur(long[] point) {
    for (Box box : impossible) {
      if (box.contains(point)) {
        return false;
      }
    }
    return true;
  }

  Outcome outcome(long[] point) {
    return state(grid.at(point)).outcome();
  }

  private State state(long[] in) {
    if (Grid.common(escalate, in)) {
      return State.ESCALATE;
    }
    if (Grid.common(hold, in)) {
      return State.HELD;
    }
    for (Allow allow : allows) {
      if (allow.hasForce(in)) {
        return State.PROCEED;
      }
    }
    return Grid.common(speaks, in) ? State.NOT_YET : State.NOT_COVERED;
  }

  /** What one case comes to, and the rules that fire in it. */
  Outlook outlook(long[] point) {
    long[] in = grid.at(point);
    return new Outlook(Possible.only(state(in), point), new Firing(fired(in), without(in)));
  }

  private List<CompiledRule> fired(long[] in) {
    List<CompiledRule> fired = new ArrayList<>();
    int last = -1;
    for (int w = 0; w < in.length; w++) {
      for (long left = in[w]; left != 0; left &= left - 1) {
        int next = rule[(w << 6) + Long.numberOfTrailingZeros(left)];
        if (next != last) {
          fired.add(rules.get(next));
        }
        last = next;
      }
    }
    return fired;
  }

  private List<CompiledRule> without(long[] in) {
    List<CompiledRule> without = List.of();
    for (Allow allow : allows) {
      if (allow.isSetAside(in)) {
        without = without.isEmpty() ? new ArrayList<>() : without;
        without.add(allow.rule);
      }
    }
    return without;
  }

  /**
   * Whether giving one finding another value, and leaving all else, changes what a case comes to. A
   * quick yes saves a search; a no says nothing.
   *
   * @param point a case of the region
   * @param finding the finding
   * @param region the values that it may have
   */
  boolean flipChanges(long[] point, int finding, long[] region) {
    Outcome before = outcome(point);
    long[] flipped = Arrays.copyOf(point, space.size());
    for (long left = region[finding] & ~point[finding]; left != 0; left &= left - 1) {
      flipped[finding] = Long.lowestOneBit(left);
      if (canOccur(flipped) && outcome(flipped) != before) {
        return true;
      }
    }
    return false;
  }
}
