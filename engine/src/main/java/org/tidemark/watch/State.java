package org.tidemark.watch;

import java.util.BitSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tidemark.model.FeedMode;
import org.tidemark.source.Ordered;

/**
 * What is so of a tube after some of its events, in one order that they may have had.
 *
 * @param seen which events are behind
 * @param since when the last of them happened, unless that was the check
 * @param passed whether the passing of this tube is among them
 * @param in whether the tube is in
 * @param ended whether no check of this passing can stand any more
 * @param check the last check that counts
 * @param mode how feed goes down
 * @param paused whether it is paused
 * @param causes what has ended that check, each lapse with the event that set it off first
 * @param suspended what suspends it for now, in the same way
 * @param used the lapses of a use whose one use is spent
 * @param stretches of each way to feed, the last stretch of time since the check in which it was so
 */
record State(
    BitSet seen,
    Minutes since,
    boolean passed,
    boolean in,
    boolean ended,
    Optional<Check> check,
    FeedMode mode,
    boolean paused,
    Map<String, Integer> causes,
    Map<String, Integer> suspended,
    Set<String> used,
    Map<FeedMode, Stretch> stretches) {
  private static final Minutes NEVER = new Minutes(Long.MIN_VALUE, Long.MIN_VALUE);

  State {
    causes = Ordered.map(new TreeMap<>(causes));
    suspended = Ordered.map(new TreeMap<>(suspended));
    used = Ordered.set(new TreeSet<>(used));
    stretches = Ordered.map(new TreeMap<>(stretches));
  }

  /**
   * A check and when it was made, in this order of events.
   *
   * @param event its place in the record
   * @param earliest the first minute in which it may have been made
   * @param latest the last
   */
  record Check(int event, long earliest, long latest) {}

  /**
   * A stretch between two events, the first minute of it included.
   *
   * @param from the first minute
   * @param until the minute after the last
   */
  record Stretch(Minutes from, Minutes until) {}

  /**
   * A minute that is not quite known.
   *
   * @param earliest the first that it may be
   * @param latest the last
   */
  record Minutes(long earliest, long latest) {}

  /** Before the first event: in, as far as is known, and feed may run in any way. */
  static State before(FeedMode mode) {
    return new State(
        new BitSet(),
        NEVER,
        false,
        true,
        false,
        Optional.empty(),
        mode,
        false,
        Map.of(),
        Map.of(),
        Set.of(),
        Map.of());
  }

  /** A tube that was just passed: nothing of an earlier passing is true of it. */
  State newlyPassed() {
    return new State(
        seen,
        since,
        true,
        true,
        false,
        Optional.empty(),
        FeedMode.NONE,
        false,
        Map.of(),
        Map.of(),
        Set.of(),
        Map.of());
  }

  State out() {
    return new State(
        seen,
        since,
        passed,
        false,
        ended,
        Optional.empty(),
        FeedMode.NONE,
        false,
        Map.of(),
        suspended,
        Set.of(),
        Map.of());
  }

  /** What follows begins with the check itself, which no clock can end in the same minute. */
  State checked(Check now) {
    return new State(
        seen,
        NEVER,
        passed,
        in,
        ended,
        Optional.of(now),
        mode,
        paused,
        Map.of(),
        suspended,
        Set.of(),
        Map.of());
  }

  State feeding(FeedMode how, boolean pause) {
    return new State(
        seen, since, passed, in, ended, check, how, pause, causes, suspended, used, stretches);
  }

  State endedFor(String lapse, int event) {
    return new State(
        seen,
        since,
        passed,
        in,
        true,
        check,
        mode,
        paused,
        causes,
        with(suspended, lapse, event),
        used,
        stretches);
  }

  State lapsed(String lapse, int event) {
    return check.isEmpty()
        ? this
        : new State(
            seen,
            since,
            passed,
            in,
            ended,
            check,
            mode,
            paused,
            with(causes, lapse, event),
            suspended,
            used,
            stretches);
  }

  State suspendedBy(String lapse, int event) {
    return new State(
        seen,
        since,
        passed,
        in,
        ended,
        check,
        mode,
        paused,
        causes,
        with(suspended, lapse, event),
        used,
        stretches);
  }

  State settled(String lapse) {
    Map<String, Integer> fewer = new TreeMap<>(suspended);
    fewer.remove(lapse);
    return new State(
        seen, since, passed, in, ended, check, mode, paused, causes, fewer, used, stretches);
  }

  State spent(String lapse) {
    Set<String> more = new TreeSet<>(used);
    more.add(lapse);
    return new State(
        seen, since, passed, in, ended, check, mode, paused, causes, suspended, more, stretches);
  }

  /** The same after a stretch of time in which nothing happened. */
  State until(Minutes end) {
    if (check.isEmpty()) {
      return this;
    }
    Map<FeedMode, Stretch> more = new TreeMap<>(stretches);
    more.put(mode, new Stretch(since, end));
    return new State(
        seen, since, passed, in, ended, check, mode, paused, causes, suspended, used, more);
  }

  /** With one event more behind it. */
  State having(int event, Minutes at) {
    BitSet more = (BitSet) seen.clone();
    more.set(event);
    return new State(
        more, at, passed, in, ended, check, mode, paused, causes, suspended, used, stretches);
  }

  private static Map<String, Integer> with(Map<String, Integer> all, String lapse, int event) {
    Map<String, Integer> more = new TreeMap<>(all);
    more.putIfAbsent(lapse, event);
    return more;
  }
}
