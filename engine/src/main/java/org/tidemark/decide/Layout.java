package org.tidemark.decide;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.tidemark.model.Effect;

/**
 * All boxes of a question in the order in which its searches put them in the way: what cannot
 * occur, then what escalates, what holds, what allows with force, what else speaks; last, the allow
 * rules as they are written.
 */
final class Layout {
  /**
   * A run of boxes.
   *
   * @param from the first
   * @param to the one behind the last
   */
  record Run(int from, int to) {
    int count() {
      return to - from;
    }
  }

  private final CompiledQuestion compiled;
  private final List<Box> boxes = new ArrayList<>();
  private final IdentityHashMap<CompiledRule, Run> runs = new IdentityHashMap<>();
  private final Obstacles obstacles;
  private final Run impossible;
  private final Run escalate;
  private final Run hold;
  private final Run force;
  private final Run speaks;

  Layout(CompiledQuestion compiled) {
    this.compiled = compiled;
    this.impossible = add(compiled.impossible());
    this.escalate = rules(Effect.ESCALATE);
    this.hold = rules(Effect.HOLD);
    this.force = add(compiled.force());
    this.speaks = new Run(rules(Effect.NOT_YET).from(), rules(Effect.SET_ASIDE).to());
    rules(Effect.ALLOW);
    this.obstacles = Obstacles.of(boxes);
  }

  private Run add(List<Box> more) {
    int from = boxes.size();
    boxes.addAll(more);
    return new Run(from, boxes.size());
  }

  private Run rules(Effect effect) {
    int from = boxes.size();
    compiled.rules().stream().filter(r -> r.has(effect)).forEach(r -> runs.put(r, add(r.boxes())));
    return new Run(from, boxes.size());
  }

  Obstacles obstacles() {
    return obstacles;
  }

  Run impossible() {
    return impossible;
  }

  Run escalate() {
    return escalate;
  }

  Run hold() {
    return hold;
  }

  Run force() {
    return force;
  }

  /** What speaks where nothing allows. */
  Run speaks() {
    return speaks;
  }

  /** The boxes in which one rule holds. */
  Run rule(CompiledRule rule) {
    Run run = runs.get(rule);
    if (run == null) {
      throw new IllegalArgumentException("no rule of this question: " + rule.rule().name());
    }
    return run;
  }

  List<Box> boxes(Run run) {
    return boxes.subList(run.from(), run.to());
  }
}
