package org.tidemark.watch;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.model.FeedMode;

/** What a check comes to in one of the states that a tube may be in now. */
final class Verdict {
  private final State state;
  private final Set<String> surely = new TreeSet<>();
  private final Set<String> perhaps = new TreeSet<>();

  Verdict(State state, List<Deadline> deadlines) {
    this.state = state;
    surely.addAll(state.causes().keySet());
    surely.addAll(state.suspended().keySet());
    state.check().ifPresent(check -> deadlines.forEach(d -> clock(d, check)));
    perhaps.addAll(surely);
  }

  /**
   * The check as late as it can be and all after it as early as they can be: if it lapses even
   * then, it surely has. The other way round, it may have.
   */
  private void clock(Deadline deadline, State.Check check) {
    String name = deadline.lapse().name();
    for (FeedMode mode : FeedMode.values()) {
      State.Stretch in = state.stretches().get(mode);
      if (in != null && deadline.runs(mode)) {
        long late = check.latest();
        if (reaches(
            deadline.after(late),
            Math.max(late, in.from().earliest()),
            Math.max(late, in.until().earliest()))) {
          surely.add(name);
        }
        if (reaches(deadline.after(check.earliest()), in.from().latest(), in.until().latest())) {
          perhaps.add(name);
        }
      }
    }
  }

  private static boolean reaches(long deadline, long from, long until) {
    return from >= deadline || until > deadline;
  }

  State state() {
    return state;
  }

  Set<String> surely() {
    return surely;
  }

  Set<String> perhaps() {
    return perhaps;
  }

  boolean mayStand() {
    return state.check().isPresent() && !state.ended() && surely.isEmpty();
  }

  /** Every word that may be true of the last check. */
  Set<String> words() {
    if (state.check().isEmpty()) {
      return Set.of(state.passed() || !state.in() ? Words.NEVER : Words.NOT_RECORDED);
    }
    Set<String> words = new TreeSet<>();
    if (mayStand()) {
      words.add(Words.STANDING);
    }
    if (!perhaps.isEmpty() || state.ended()) {
      words.add(Words.LAPSED);
    }
    return words;
  }
}
