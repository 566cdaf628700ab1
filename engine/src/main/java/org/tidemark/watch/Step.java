package org.tidemark.watch;

import java.util.List;
import java.util.Set;
import org.tidemark.model.EventKind;
import org.tidemark.model.FeedMode;
import org.tidemark.model.Lapse;

/** What one event makes of a state; more than one when it does not say how feed goes down. */
final class Step {
  private final List<Lapse> lapses;

  Step(List<Lapse> lapses) {
    this.lapses = lapses;
  }

  /**
   * The states after an event.
   *
   * @param before the state, with the event already counted as behind it
   * @param index the event's place in the record
   * @param kind the event
   */
  List<State> after(State before, int index, EventKind kind) {
    return meaning(before, index, kind).stream()
        .map(s -> uses(s, before, index, kind))
        .map(s -> told(s, index, kind))
        .toList();
  }

  private static List<State> meaning(State state, int index, EventKind kind) {
    if (kind.means().isEmpty()) {
      return List.of(state);
    }
    return switch (kind.means().get()) {
      case PASSED -> List.of(state.newlyPassed());
      case OUT -> List.of(state.out());
      case CHECKED -> List.of(checked(state, index));
      case USE_BEGINS -> modes(state, kind).map(m -> state.feeding(m, false)).toList();
      case USE_PAUSES -> List.of(state.feeding(state.mode(), true));
      case USE_ENDS -> List.of(state.feeding(FeedMode.NONE, false));
      case USE, HUNG, TAKEN_DOWN -> List.of(state);
    };
  }

  /** A check of a tube that is out, or of a passing that has ended, does not count. */
  private static State checked(State state, int index) {
    State.Minutes at = state.since();
    return state.in() && !state.ended()
        ? state.checked(new State.Check(index, at.earliest(), at.latest()))
        : state;
  }

  private static java.util.stream.Stream<FeedMode> modes(State state, EventKind kind) {
    if (kind.feedMode().isPresent()) {
      return kind.feedMode().stream();
    }
    return state.mode() == FeedMode.NONE
        ? java.util.stream.Stream.of(FeedMode.CONTINUOUS, FeedMode.BOLUS)
        : java.util.stream.Stream.of(state.mode());
  }

  /** The first use after a check rests on it; the next needs a new one. */
  private State uses(State state, State before, int index, EventKind kind) {
    if (!kind.beginsUse() || goesOn(before, kind) || state.check().isEmpty()) {
      return state;
    }
    State after = state;
    for (Lapse lapse : lapses) {
      Set<FeedMode> modes = lapse.triggers().feedModes();
      boolean counts =
          kind.use().filter(lapse.triggers().uses()::contains).isPresent()
              && (modes.isEmpty() || modes.contains(state.mode()));
      if (counts) {
        after =
            after.used().contains(lapse.name())
                ? after.lapsed(lapse.name(), index)
                : after.spent(lapse.name());
      }
    }
    return after;
  }

  /** A pause does not end a feed, so that what goes on after it is the same use. */
  private static boolean goesOn(State before, EventKind kind) {
    return kind.is(EventKind.Means.USE_BEGINS)
        && before.paused()
        && before.mode() != FeedMode.NONE
        && kind.feedMode().map(m -> m == before.mode()).orElse(true);
  }

  private State told(State state, int index, EventKind kind) {
    State after = state;
    for (Lapse lapse : lapses) {
      after = told(after, index, kind.name(), lapse);
    }
    return after;
  }

  private static State told(State state, int index, String event, Lapse lapse) {
    boolean sets = lapse.triggers().events().contains(event);
    if (lapse.does() instanceof Lapse.SuspendsUntil suspends) {
      State open = suspends.events().contains(event) ? state.settled(lapse.name()) : state;
      return sets ? open.suspendedBy(lapse.name(), index) : open;
    }
    if (!sets) {
      return state;
    }
    return lapse.does() instanceof Lapse.Ends
        ? state.endedFor(lapse.name(), index)
        : state.lapsed(lapse.name(), index);
  }
}
