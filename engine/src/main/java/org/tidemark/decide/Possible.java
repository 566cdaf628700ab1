package org.tidemark.decide;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.tidemark.model.Outcome;

/**
 * What the cases of a region come to.
 *
 * @param states every state that some case comes to
 * @param settled false when the budget was spent before every state was looked for
 */
record Possible(Set<State> states, boolean settled) {
  Possible {
    states = states.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(states));
  }

  Set<Outcome> outcomes() {
    Set<Outcome> outcomes = EnumSet.noneOf(Outcome.class);
    states.forEach(s -> outcomes.add(s.outcome()));
    return outcomes;
  }

  /** Whether every case comes to this state. */
  boolean only(State state) {
    return settled && states.equals(EnumSet.of(state));
  }
}
