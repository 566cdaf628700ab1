package org.tidemark.decide;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.model.Effect;

/**
 * Asks a compiled question about whole regions of cases: what they come to, and which rules fire in
 * all or some of them.
 */
final class Questions {
  private final CompiledQuestion compiled;
  private final int budget;
  private final List<Box> impossible;
  private final List<Box> notEscalated;
  private final List<Box> notStopped;
  private final List<Box> nothingAllows;
  private final List<Box> silence;

  Questions(CompiledQuestion compiled, int budget) {
    this.compiled = compiled;
    this.budget = budget;
    this.impossible = compiled.impossible();
    this.notEscalated = join(impossible, compiled.boxes(Effect.ESCALATE));
    this.notStopped = join(notEscalated, compiled.boxes(Effect.HOLD));
    this.nothingAllows = join(notStopped, compiled.force());
    this.silence =
        join(join(nothingAllows, compiled.boxes(Effect.NOT_YET)), compiled.boxes(Effect.SET_ASIDE));
  }

  static List<Box> join(List<Box> some, List<Box> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  /** Every state that a case of the region comes to. */
  Possible possible(long[] region) {
    Set<State> states = EnumSet.noneOf(State.class);
    boolean settled = true;
    for (State state : State.values()) {
      Search.Result result = reaches(state, region);
      settled &= result != Search.Result.UNDECIDED;
      if (result == Search.Result.FOUND) {
        states.add(state);
      }
    }
    return new Possible(states, settled);
  }

  private Search.Result reaches(State state, long[] region) {
    return switch (state) {
      case ESCALATE -> inOne(region, compiled.boxes(Effect.ESCALATE), impossible);
      case HELD -> inOne(region, compiled.boxes(Effect.HOLD), notEscalated);
      case PROCEED -> inOne(region, compiled.force(), notStopped);
      case NOT_YET ->
          inOne(
              region,
              join(compiled.boxes(Effect.NOT_YET), compiled.boxes(Effect.SET_ASIDE)),
              nothingAllows);
      case NOT_COVERED -> Search.in(compiled.withSwitches(region), silence, budget).result();
    };
  }

  /** Whether some case of the region lies in one of the boxes and dodges all the others. */
  private Search.Result inOne(long[] region, List<Box> boxes, List<Box> dodge) {
    boolean undecided = false;
    for (Box box : boxes) {
      long[] there = compiled.withSwitches(region);
      if (box.narrow(there)) {
        Search.Result result = Search.in(there, dodge, budget).result();
        if (result == Search.Result.FOUND) {
          return result;
        }
        undecided |= result == Search.Result.UNDECIDED;
      }
    }
    return undecided ? Search.Result.UNDECIDED : Search.Result.NONE;
  }

  /** Whether no case at all is left in the region. */
  boolean isEmpty(long[] region) {
    return Search.in(compiled.withSwitches(region), impossible, budget).result()
        == Search.Result.NONE;
  }

  /** Whether the rule fires in every case of the region. */
  boolean firesForCertain(CompiledRule rule, long[] region) {
    return !rule.boxes().isEmpty()
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
