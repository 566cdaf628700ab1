package org.tidemark.decide;

import java.util.IdentityHashMap;
import java.util.List;
import org.tidemark.model.Effect;

/** The ways in which a question can allow, each a box with the boxes that set it aside. */
final class Allowances {
  private final List<Box> ways;
  private final IdentityHashMap<Box, List<Box>> setsAside = new IdentityHashMap<>();

  Allowances(CompiledQuestion compiled) {
    this.ways = compiled.boxes(Effect.ALLOW);
    for (CompiledRule allow : compiled.rules()) {
      if (allow.has(Effect.ALLOW)) {
        List<Box> against =
            compiled.rules().stream()
                .filter(r -> r.setsAside(allow))
                .flatMap(r -> r.boxes().stream())
                .toList();
        allow.boxes().forEach(b -> setsAside.put(b, against));
      }
    }
  }

  private List<Box> against(Box way) {
    return setsAside.getOrDefault(way, List.of());
  }

  /** Narrows a reason to where a way by which the case is allowed stays open. */
  void allowed(long[] point, Cube why) {
    Box way =
        ways.stream()
            .filter(w -> w.contains(point))
            .filter(w -> against(w).stream().noneMatch(a -> a.contains(point)))
            .findFirst()
            .orElseThrow();
    why.inside(way);
    why.outside(against(way), point);
  }

  /** Narrows a reason to where each way that might allow the case stays shut. */
  void notAllowed(long[] point, Cube why) {
    for (Box way : ways) {
      if (way.contains(point)) {
        against(way).stream().filter(a -> a.contains(point)).findFirst().ifPresent(why::inside);
      } else {
        why.outside(List.of(way), point);
      }
    }
  }
}
