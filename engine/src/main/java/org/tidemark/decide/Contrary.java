package org.tidemark.decide;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/** Looks for cases of a region that do not come to a wanted outcome. */
final class Contrary {
  private final CompiledQuestion compiled;
  private final Points points;
  private final Allowances allowances;
  private final Outcome wanted;
  private final int budget;
  private final List<Box> impossible;
  private final List<Box> escalate;
  private final List<Box> stop;
  private boolean undecided;

  Contrary(CompiledQuestion compiled, Outcome wanted, Limits limits) {
    this.compiled = compiled;
    this.points = new Points(compiled);
    this.allowances = new Allowances(compiled);
    this.wanted = wanted;
    this.budget = limits.search();
    this.impossible = compiled.impossible();
    this.escalate = compiled.boxes(Effect.ESCALATE);
    this.stop = Questions.join(escalate, compiled.boxes(Effect.HOLD));
  }

  /** Whether some search outlasted its budget; then that nothing was found says nothing. */
  boolean undecided() {
    return undecided;
  }

  /** A case that comes to another outcome. */
  Optional<Against> find(long[] region) {
    return switch (wanted) {
      case PROCEED ->
          inOne(region, stop, impossible).or(() -> nothing(region, compiled.force()));
      case HOLD ->
          inOne(region, escalate, impossible)
              .or(() -> inOne(region, compiled.force(), Questions.join(impossible, stop)));
      case ESCALATE -> nothing(region, escalate);
    };
  }

  /** Whether the region has any case. */
  boolean some(long[] region) {
    return search(compiled.withSwitches(region), impossible).isPresent();
  }

  private Optional<Against> inOne(long[] region, List<Box> boxes, List<Box> dodge) {
    for (Box box : boxes) {
      long[] there = compiled.withSwitches(region);
      if (box.narrow(there)) {
        Optional<long[]> found = search(there, dodge);
        if (found.isPresent()) {
          return found.map(this::against);
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Against> nothing(long[] region, List<Box> boxes) {
    return search(compiled.withSwitches(region), Questions.join(impossible, boxes))
        .map(this::against);
  }

  private Optional<long[]> search(long[] region, List<Box> dodge) {
    Search search = Search.in(region, dodge, budget);
    undecided |= search.result() == Search.Result.UNDECIDED;
    return search.result() == Search.Result.FOUND
        ? Optional.of(search.witness())
        : Optional.empty();
  }

  private Against against(long[] point) {
    Cube why = new Cube(compiled.space().everything());
    if (wanted == Outcome.ESCALATE) {
      why.outside(escalate, point);
      return new Against(point, why);
    }
    switch (points.outcome(point)) {
      case ESCALATE -> why.inside(smallestAround(escalate, point));
      case HOLD -> held(point, why);
      case PROCEED -> {
        allowances.allowed(point, why);
        why.outside(stop, point);
      }
    }
    return new Against(point, why);
  }

  private void held(long[] point, Cube why) {
    if (stop.stream().anyMatch(b -> b.contains(point))) {
      why.inside(smallestAround(stop, point));
    } else {
      allowances.notAllowed(point, why);
    }
  }

  private static Box smallestAround(List<Box> boxes, long[] point) {
    return boxes.stream()
        .filter(b -> b.contains(point))
        .min(Comparator.comparingInt(Box::size))
        .orElseThrow();
  }
}
