package org.tidemark.watch;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.EventKind;
import org.tidemark.model.Lapse;
import org.tidemark.model.TubeRecord;

/**
 * Watches a tube by what a policy says makes a check lapse. What is not in the record did not
 * happen; a time that is not known may be any up to now. The answer is right for every order and
 * every time that the record leaves open.
 */
public final class Watch {
  private final List<Lapse> lapses;
  private final Map<String, EventKind> kinds = new TreeMap<>();
  private final List<Deadline> deadlines;
  private final Clock clock;

  private Watch(EffectivePolicy policy) {
    this.clock = new Clock(policy.header().clock());
    this.lapses = policy.care().lapses();
    policy.vocabulary().events().forEach(e -> kinds.put(e.name(), e));
    this.deadlines = lapses.stream().flatMap(l -> Deadline.of(policy, l, clock).stream()).toList();
  }

  public static Watch of(EffectivePolicy policy) {
    return new Watch(policy);
  }

  /** What the events come to now; nothing when they may have had too many orders to follow. */
  public Optional<Watched> look(List<TubeRecord.Event> events, LocalDateTime now) {
    long latest = clock.last(now);
    List<Happened> happened = events.stream().map(e -> happened(e, latest)).toList();
    return new Course(happened, new Step(lapses), latest)
        .ends()
        .map(ends -> watched(ends, happened, latest));
  }

  private Happened happened(TubeRecord.Event event, long now) {
    EventKind kind = kinds.get(event.what());
    if (kind == null) {
      throw new IllegalArgumentException("no event is called " + event.what());
    }
    long from = event.from().map(clock::first).orElse(Long.MIN_VALUE);
    long to = event.to().map(clock::last).orElse(now);
    return new Happened(kind, Math.min(from, now), Math.min(to, now), event);
  }

  private Watched watched(Set<State> ends, List<Happened> events, long now) {
    List<Verdict> verdicts = ends.stream().map(s -> new Verdict(s, deadlines)).toList();
    Set<String> words = new TreeSet<>();
    verdicts.forEach(v -> words.addAll(v.words()));
    return new Watched(words, minutes(words, verdicts, now), gone(verdicts, events), due(verdicts));
  }

  private static Optional<Watched.Minutes> minutes(
      Set<String> words, List<Verdict> verdicts, long now) {
    if (!words.equals(Set.of(Words.STANDING))) {
      return Optional.empty();
    }
    List<State.Check> checks = verdicts.stream().flatMap(v -> v.state().check().stream()).toList();
    if (checks.stream().anyMatch(c -> c.earliest() == Long.MIN_VALUE)) {
      return Optional.empty();
    }
    return checks.stream()
        .map(c -> new Watched.Minutes(now - c.latest(), now - c.earliest()))
        .reduce(
            (a, b) ->
                new Watched.Minutes(Math.min(a.least(), b.least()), Math.max(a.most(), b.most())));
  }

  private List<Watched.Gone> gone(List<Verdict> verdicts, List<Happened> events) {
    List<Watched.Gone> gone = new ArrayList<>();
    for (Lapse lapse : lapses) {
      Optional<Verdict> first =
          verdicts.stream().filter(v -> v.perhaps().contains(lapse.name())).findFirst();
      boolean certain = verdicts.stream().allMatch(v -> v.surely().contains(lapse.name()));
      first.ifPresent(v -> gone.add(gone(lapse, certain, v, events)));
    }
    return gone;
  }

  private Watched.Gone gone(Lapse lapse, boolean certain, Verdict verdict, List<Happened> events) {
    State state = verdict.state();
    Optional<LocalDateTime> check =
        state.check().map(c -> events.get(c.event())).flatMap(h -> exact(h.event()));
    Optional<Happened> cause =
        Stream.of(state.causes(), state.suspended())
            .flatMap(m -> Optional.ofNullable(m.get(lapse.name())).stream())
            .findFirst()
            .map(events::get);
    Optional<LocalDateTime> at =
        cause.isPresent()
            ? cause.flatMap(c -> exact(c.event()))
            : state.check().flatMap(c -> deadline(lapse, c.latest()));
    return new Watched.Gone(lapse, certain, check, cause.map(c -> c.kind().says()), at);
  }

  private static Optional<LocalDateTime> exact(TubeRecord.Event event) {
    return event.from().filter(f -> event.to().filter(f::equals).isPresent());
  }

  private Optional<LocalDateTime> deadline(Lapse lapse, long check) {
    return deadlines.stream()
        .filter(d -> d.lapse().name().equals(lapse.name()))
        .map(d -> clock.hands(d.after(check)))
        .findFirst();
  }

  /** The first minute at which each clock may end a check that may stand. */
  private List<Watched.Due> due(List<Verdict> verdicts) {
    List<Watched.Due> due = new ArrayList<>();
    for (Deadline deadline : deadlines) {
      verdicts.stream()
          .filter(v -> v.mayStand() && deadline.runs(v.state().mode()))
          .flatMap(v -> v.state().check().stream())
          .filter(c -> c.earliest() > Long.MIN_VALUE)
          .map(c -> deadline.after(c.earliest()))
          .min(Comparator.naturalOrder())
          .ifPresent(m -> due.add(new Watched.Due(deadline.lapse(), clock.hands(m))));
    }
    return due;
  }
}
