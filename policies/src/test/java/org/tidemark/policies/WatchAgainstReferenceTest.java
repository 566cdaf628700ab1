package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.TubeRecord;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.watch.Watch;
import org.tidemark.watch.Watched;

/**
 * What a tube's events come to, against a slow and obvious reference: write every open time in
 * every minute, take the events of one minute in every order, walk through the record minute by
 * minute, and take the set of what comes out. Ours is the same set.
 */
class WatchAgainstReferenceTest {
  private static final EffectivePolicy POLICY = Shipped.policy("watch/small");
  private static final Place HERE = Place.at(new Span(SourceText.of("record", " "), 0, 1));
  private static final int NOW = 12;
  private static final List<String> KINDS =
      List.of(
          "position-confirmed",
          "position-confirmed",
          "position-confirmed",
          "tube-passed",
          "tube-came-out",
          "continuous-feed-started",
          "bolus-feed-started",
          "feed-begun-again",
          "feed-paused",
          "feed-stopped",
          "medicine-given",
          "vomited",
          "doubt-raised",
          "doubt-settled",
          "operation");

  /** An event and the minutes between which it happened. */
  private record Event(String what, int from, int to) {}

  @Test
  void theSameWordsAndTheSameCausesWhateverIsOpen() {
    Random chance = new Random(20260903);
    Map<Set<String>, Integer> words = new LinkedHashMap<>();
    Set<String> causes = new TreeSet<>();
    for (int i = 0; i < 3_000; i++) {
      List<Event> events = events(chance);
      Outcomes reference = new Outcomes();
      minutes(events, new ArrayList<>(), reference);
      Watched ours = Watch.of(POLICY).look(record(events), at(NOW)).orElseThrow();
      assertEquals(reference.words, new TreeSet<>(ours.confirmation()), events::toString);
      assertEquals(reference.certain(), names(ours, true), events::toString);
      assertEquals(reference.possible(), names(ours, false), events::toString);
      words.merge(reference.words, 1, Integer::sum);
      causes.addAll(reference.possible());
      if (reference.words.equals(Set.of("standing"))) {
        Watched.Minutes ago = ours.minutes().orElseThrow();
        assertTrue(
            ago.least() <= reference.least && ago.most() >= reference.most, events::toString);
      }
    }
    assertEquals(POLICY.care().lapses().size(), causes.size(), causes::toString);
    assertTrue(words.getOrDefault(Set.of("standing"), 0) > 50, words::toString);
    assertTrue(words.getOrDefault(Set.of("lapsed", "standing"), 0) > 50, words::toString);
    assertTrue(words.getOrDefault(Set.of("lapsed"), 0) > 50, words::toString);
  }

  private static Set<String> names(Watched watched, boolean certain) {
    return watched.gone().stream()
        .filter(g -> g.certain() || !certain)
        .map(g -> g.lapse().name())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<Event> events(Random chance) {
    List<Event> all = new ArrayList<>();
    int many = 1 + chance.nextInt(5);
    for (int i = 0; i < many; i++) {
      int from = chance.nextInt(NOW + 1);
      int wide = chance.nextInt(3) == 0 ? chance.nextInt(4) : 0;
      all.add(new Event(KINDS.get(chance.nextInt(KINDS.size())), from, Math.min(NOW, from + wide)));
    }
    return all;
  }

  private static List<TubeRecord.Event> record(List<Event> events) {
    return events.stream()
        .map(
            e ->
                new TubeRecord.Event(
                    Optional.of(at(e.from())), Optional.of(at(e.to())), e.what(), HERE))
        .toList();
  }

  private static LocalDateTime at(int minute) {
    return LocalDateTime.of(2026, 9, 1, 0, minute);
  }

  /** Everything that came out. */
  private static final class Outcomes {
    private final Set<String> words = new TreeSet<>();
    private final List<Set<String>> causes = new ArrayList<>();
    private int least = Integer.MAX_VALUE;
    private int most = -1;

    Set<String> possible() {
      return causes.stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    Set<String> certain() {
      Set<String> all = possible();
      causes.forEach(all::retainAll);
      return all;
    }
  }

  private static void minutes(List<Event> events, List<Integer> chosen, Outcomes out) {
    if (chosen.size() == events.size()) {
      List<Integer> left = new ArrayList<>();
      for (int i = 0; i < events.size(); i++) {
        left.add(i);
      }
      orders(events, chosen, left, new ArrayList<>(), out);
      return;
    }
    Event next = events.get(chosen.size());
    for (int minute = next.from(); minute <= next.to(); minute++) {
      chosen.add(minute);
      minutes(events, chosen, out);
      chosen.remove(chosen.size() - 1);
    }
  }

  private static void orders(
      List<Event> events,
      List<Integer> minutes,
      List<Integer> left,
      List<Integer> order,
      Outcomes out) {
    if (left.isEmpty()) {
      for (String mode : List.of("none", "continuous", "bolus")) {
        for (String unsaid : List.of("continuous", "bolus")) {
          new Walk(mode, unsaid).through(events, minutes, order, out);
        }
      }
      return;
    }
    int soonest = left.stream().mapToInt(minutes::get).min().orElseThrow();
    for (Integer next : List.copyOf(left)) {
      if (minutes.get(next) == soonest) {
        left.remove(next);
        order.add(next);
        orders(events, minutes, left, order, out);
        order.remove(order.size() - 1);
        left.add(next);
      }
    }
  }

  /** One tube, minute by minute, by the sentences of the developers' document. */
  private static final class Walk {
    private final String unsaid;
    private String mode;
    private boolean paused;
    private boolean passed;
    private boolean in = true;
    private boolean ended;
    private int check = -1;
    private final Set<String> lapsed = new TreeSet<>();
    private final Set<String> suspended = new TreeSet<>();
    private final Set<String> used = new HashSet<>();

    Walk(String mode, String unsaid) {
      this.mode = mode;
      this.unsaid = unsaid;
    }

    void through(List<Event> events, List<Integer> minutes, List<Integer> order, Outcomes out) {
      int next = 0;
      for (int minute = 0; minute <= NOW; minute++) {
        clocks(minute, next == order.size() || minutes.get(order.get(next)) != minute);
        while (next < order.size() && minutes.get(order.get(next)) == minute) {
          happen(events.get(order.get(next)).what(), minute);
          clocks(minute, true);
          next++;
        }
      }
      Set<String> causes = new TreeSet<>(lapsed);
      causes.addAll(suspended);
      if (check < 0) {
        out.words.add(passed || !in ? "never" : "not-recorded");
        causes.retainAll(suspended);
      } else {
        boolean stands = causes.isEmpty() && !ended;
        out.words.add(stands ? "standing" : "lapsed");
        out.least = Math.min(out.least, NOW - check);
        out.most = Math.max(out.most, NOW - check);
      }
      out.causes.add(causes);
    }

    private void clocks(int minute, boolean look) {
      if (!look || check < 0) {
        return;
      }
      if (mode.equals("continuous") && minute >= check + 4) {
        lapsed.add("continuous-clock");
      }
      if (mode.equals("none") && minute >= check + 4) {
        lapsed.add("no-feed-clock");
      }
      if (minute >= check + 7) {
        lapsed.add("any-clock");
      }
      if (mode.equals("bolus") && check < 5 && minute >= 5) {
        lapsed.add("new-shift");
      }
    }

    private void happen(String what, int minute) {
      switch (what) {
        case "tube-passed" -> {
          forget();
          suspended.clear();
          passed = true;
          in = true;
          ended = false;
        }
        case "tube-came-out" -> {
          forget();
          in = false;
        }
        case "position-confirmed" -> checked(minute);
        case "continuous-feed-started" -> feed("continuous");
        case "bolus-feed-started" -> feed("bolus");
        case "feed-begun-again" -> feed(mode.equals("none") ? unsaid : mode);
        case "feed-paused" -> paused = true;
        case "feed-stopped" -> {
          mode = "none";
          paused = false;
        }
        case "medicine-given" -> {
          if (mode.equals("bolus")) {
            use("each-medicine-on-bolus");
          }
        }
        case "vomited" -> lapse("vomiting");
        case "doubt-raised" -> suspended.add("doubt");
        case "doubt-settled" -> suspended.remove("doubt");
        case "operation" -> {
          ended = true;
          suspended.add("operation");
        }
        default -> throw new IllegalArgumentException(what);
      }
    }

    private void forget() {
      check = -1;
      lapsed.clear();
      used.clear();
      mode = "none";
      paused = false;
    }

    private void checked(int minute) {
      if (in && !ended) {
        check = minute;
        lapsed.clear();
        used.clear();
      }
    }

    private void feed(String how) {
      boolean goesOn = paused && mode.equals(how) && !mode.equals("none");
      mode = how;
      paused = false;
      if (!goesOn) {
        use("each-feed");
      }
    }

    private void use(String lapse) {
      if (check >= 0 && !used.add(lapse)) {
        lapse(lapse);
      }
    }

    private void lapse(String name) {
      if (check >= 0) {
        lapsed.add(name);
      }
    }
  }
}
