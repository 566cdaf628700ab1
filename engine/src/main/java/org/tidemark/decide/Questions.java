package org.tidemark.decide;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidemark.model.Effect;

/**
 * Asks a compiled question about whole regions of cases: what they come to, and which rules fire in
 * all or some of them.
 */
final class Questions {
  private final CompiledQuestion compiled;
  private final int budget;
  private final List<Box> escalate;
  private final List<Box> hold;
  private final List<Box> force;
  private final List<Box> speaks;
  private final List<Box> impossible;
  private final List<Box> notEscalated;
  private final List<Box> notStopped;
  private final List<Box> nothingAllows;
  private final List<Box> silence;

  Questions(CompiledQuestion compiled, int budget) {
    this.compiled = compiled;
    this.budget = budget;
    this.escalate = compiled.boxes(Effect.ESCALATE);
    this.hold = compiled.boxes(Effect.HOLD);
    this.force = compiled.force();
    this.speaks = join(compiled.boxes(Effect.NOT_YET), compiled.boxes(Effect.SET_ASIDE));
    this.impossible = compiled.impossible();
    this.notEscalated = join(impossible, escalate);
    this.notStopped = join(notEscalated, hold);
    this.nothingAllows = join(notStopped, force);
    this.silence = join(nothingAllows, speaks);
  }

  static List<Box> join(List<Box> some, List<Box> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  /** Every state that a case of the region comes to. */
  Possible possible(long[] region) {
    Map<State, long[]> cases = new EnumMap<>(State.class);
    boolean settled = true;
    for (State state : State.values()) {
      Search search = reaches(state, region);
      settled &= search.result() != Search.Result.UNDECIDED;
      if (search.result() == Search.Result.FOUND) {
        cases.put(state, search.witness());
      }
    }
    return new Possible(cases, settled);
  }

  private Search reaches(State state, long[] region) {
    return switch (state) {
      case ESCALATE -> inOne(region, escalate, impossible);
      case HELD -> inOne(region, hold, notEscalated);
      case PROCEED -> inOne(region, force, notStopped);
      case NOT_YET -> inOne(region, speaks, nothingAllows);
      case NOT_COVERED -> Search.in(compiled.withSwitches(region), silence, budget);
    };
  }

  /** Looks for a case of the region that lies in one of the boxes and dodges all the others. */
  private Search inOne(long[] region, List<Box> boxes, List<Box> dodge) {
    Search worst = Search.NOTHING;
    for (Box box : boxes) {
      long[] there = compiled.withSwitches(region);
      if (box.narrow(there)) {
        Search search = Search.in(there, dodge, budget);
        if (search.result() == Search.Result.FOUND) {
          return search;
        }
        worst = search.result() == Search.Result.UNDECIDED ? search : worst;
      }
    }
    return worst;
  }

  /** Whether the rule fires in every case of the region. */
  boolean firesForCertain(CompiledRule rule, long[] region, Possible possible) {
    return !rule.boxes().isEmpty()
        && possible.cases().stream().allMatch(rule::fires)
        && Search.in(compiled.withSwitches(region), join(impossible, rule.boxes()), budget).result()
            == Search.Result.NONE;
  }

  /**
   * Whether every case of the region gives the allow rule no force, because something sets it
   * aside.
   */
  boolean setAsideForCertain(CompiledRule allow, long[] region) {
    List<Box> setsAside = new ArrayList<>();
    for (CompiledRule rule : compiled.rules()) {
      if (rule.has(Effect.SET_ASIDE) && rule.rule().which().contains(allow.rule().name())) {
        setsAside.addAll(rule.boxes());
      }
    }
    return !setsAside.isEmpty()
        && Search.in(compiled.withSwitches(region), join(impossible, setsAside), budget).result()
            == Search.Result.NONE;
  }
}
