package org.tidemark.decide;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.tidemark.model.Outcome;

/** What the cases of a region come to, with one case for each state that is possible. */
final class Possible {
  private final Map<State, long[]> cases;
  private final boolean settled;

  /**
   * What was found.
   *
   * @param cases one case for each state that some case comes to
   * @param settled false when the budget was spent before every state was looked for
   */
  Possible(Map<State, long[]> cases, boolean settled) {
    this.cases = new EnumMap<>(State.class);
    this.cases.putAll(cases);
    this.settled = settled;
  }

  /** What one case comes to. */
  static Possible only(State state, long[] point) {
    return new Possible(Map.of(state, point), true);
  }

  Set<State> states() {
    return Collections.unmodifiableSet(cases.keySet());
  }

  /** One case for each state that is possible. */
  Collection<long[]> cases() {
    return Collections.unmodifiableCollection(cases.values());
  }

  boolean settled() {
    return settled;
  }

  Set<Outcome> outcomes() {
    Set<Outcome> outcomes = EnumSet.noneOf(Outcome.class);
    for (State state : cases.keySet()) {
      outcomes.add(state.outcome());
    }
    return outcomes;
  }

  /** Whether every case comes to this state. */
  boolean only(State state) {
    return settled && cases.size() == 1 && cases.containsKey(state);
  }
}
