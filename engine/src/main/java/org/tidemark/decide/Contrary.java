package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/** Looks for cases of a region that do not come to a wanted outcome. */
final class Contrary {
  private final CompiledQuestion compiled;
  private final Points points;
  private final Layout layout;
  private final Allowances allowances;
  private final Outcome wanted;
  private final int budget;
  private final List<Box> escalate;
  private final List<Box> stop;
  private boolean undecided;

  Contrary(Means means, Outcome wanted) {
    this.compiled = means.compiled();
    this.points = means.points();
    this.layout = means.layout();
    this.allowances = new Allowances(compiled);
    this.wanted = wanted;
    this.budget = means.limits().search();
    this.escalate = compiled.boxes(Effect.ESCALATE);
    this.stop = Questions.join(escalate, compiled.boxes(Effect.HOLD));
  }

  /** Whether some search outlasted its budget; then that nothing was found says nothing. */
  boolean undecided() {
    return undecided;
  }

  /** Cases that come to another outcome, each for another reason; none if there is none. */
  List<Against> find(long[] region) {
    Search search = search(region);
    List<Against> all = new ArrayList<>();
    switch (wanted) {
      case PROCEED -> {
        inEach(layout.escalate(), search, all);
        inEach(layout.hold(), search, all);
        enter(search, layout.escalate(), layout.hold(), layout.force());
        note(search.look(), search, all);
      }
      case HOLD -> {
        inEach(layout.escalate(), search, all);
        enter(search, layout.escalate(), layout.hold());
        inEach(layout.force(), search, all);
      }
      case ESCALATE -> {
        enter(search, layout.escalate());
        note(search.look(), search, all);
      }
    }
    return all;
  }

  /** Whether the region has any case. */
  boolean some(long[] region) {
    Search.Result result = search(region).look();
    undecided |= result == Search.Result.UNDECIDED;
    return result == Search.Result.FOUND;
  }

  private Search search(long[] region) {
    Search search = Search.over(compiled.withSwitches(region), layout.obstacles(), budget);
    enter(search, layout.impossible());
    return search;
  }

  private static void enter(Search search, Layout.Run... runs) {
    search.enter(List.of(runs));
  }

  private void inEach(Layout.Run run, Search search, List<Against> all) {
    for (Box box : layout.boxes(run)) {
      note(search.lookIn(List.of(box)), search, all);
    }
  }

  private void note(Search.Result result, Search search, List<Against> all) {
    undecided |= result == Search.Result.UNDECIDED;
    if (result == Search.Result.FOUND) {
      all.add(against(search.witness()));
    }
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
