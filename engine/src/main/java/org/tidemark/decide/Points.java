package org.tidemark.decide;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/**
 * Looks at single cases: whether one can occur, and what it comes to. No search, one pass over the
 * boxes.
 */
final class Points {
  private final CellSpace space;
  private final List<Box> impossible;
  private final List<Box> escalate;
  private final List<Box> hold;
  private final Map<Box, List<Box>> setsAside = new LinkedHashMap<>();

  Points(CompiledQuestion compiled) {
    this.space = compiled.space();
    this.impossible = space.impossible();
    this.escalate = compiled.boxes(Effect.ESCALATE);
    this.hold = compiled.boxes(Effect.HOLD);
    for (CompiledRule allow : compiled.rules()) {
      if (allow.has(Effect.ALLOW)) {
        allow.boxes().forEach(b -> setsAside.put(b, setAside(compiled, allow)));
      }
    }
  }

  private static List<Box> setAside(CompiledQuestion compiled, CompiledRule allow) {
    return compiled.rules().stream()
        .filter(r -> r.has(Effect.SET_ASIDE) && r.rule().which().contains(allow.rule().name()))
        .flatMap(r -> r.boxes().stream())
        .toList();
  }

  boolean canOccur(long[] point) {
    return outside(impossible, point);
  }

  Outcome outcome(long[] point) {
    if (!outside(escalate, point)) {
      return Outcome.ESCALATE;
    }
    return outside(hold, point) && allowed(point) ? Outcome.PROCEED : Outcome.HOLD;
  }

  private boolean allowed(long[] point) {
    for (Map.Entry<Box, List<Box>> way : setsAside.entrySet()) {
      if (way.getKey().contains(point) && outside(way.getValue(), point)) {
        return true;
      }
    }
    return false;
  }

  private static boolean outside(List<Box> boxes, long[] point) {
    for (Box box : boxes) {
      if (box.contains(point)) {
        return false;
      }
    }
    return true;
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
