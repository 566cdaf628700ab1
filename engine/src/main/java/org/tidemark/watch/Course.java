package org.tidemark.watch;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.FeedMode;

/**
 * Follows every order that the events may have had. Two orders that come to the same are followed
 * as one, so that a record with exact times takes one way and an open one as many as it must.
 */
final class Course {
  /** Far more than a record has whose times are known to the hour. */
  static final int MOST_STATES = 20_000;

  private final List<Happened> events;
  private final Step step;
  private final long now;

  Course(List<Happened> events, Step step, long now) {
    this.events = events;
    this.step = step;
    this.now = now;
  }

  /** All states that the tube may be in now; nothing when they are too many to follow. */
  Optional<Set<State>> ends() {
    Set<State> states = new LinkedHashSet<>();
    for (FeedMode mode : FeedMode.values()) {
      states.add(State.before(mode));
    }
    for (int i = 0; i < events.size(); i++) {
      Set<State> next = new LinkedHashSet<>();
      for (State state : states) {
        further(state, next);
        if (next.size() > MOST_STATES) {
          return Optional.empty();
        }
      }
      states = next;
    }
    Set<State> ends = new LinkedHashSet<>();
    states.forEach(s -> ends.add(s.until(new State.Minutes(now + 1, now + 1))));
    return Optional.of(ends);
  }

  private void further(State state, Set<State> next) {
    long behind = behind(state);
    for (int i = 0; i < events.size(); i++) {
      if (!state.seen().get(i)) {
        long earliest = Math.max(behind, events.get(i).from());
        long others = others(state, i);
        if (others >= earliest && events.get(i).to() >= earliest) {
          State.Minutes at = new State.Minutes(earliest, Math.min(others, events.get(i).to()));
          next.addAll(step.after(state.until(at).having(i, at), i, events.get(i).kind()));
        }
      }
    }
  }

  /** The first minute that can come after all events that are behind. */
  private long behind(State state) {
    return state.seen().stream().mapToLong(i -> events.get(i).from()).max().orElse(Long.MIN_VALUE);
  }

  /** The last minute before which none of the other events must have happened. */
  private long others(State state, int event) {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < events.size(); i++) {
      if (i != event && !state.seen().get(i)) {
        least = Math.min(least, events.get(i).to());
      }
    }
    return least;
  }
}
