package org.tidemark.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * What makes a confirmation of position stop standing.
 *
 * @param name its name
 * @param says the trigger in words; names of values in braces are filled in
 * @param triggers what sets it off
 * @param does what comes of it
 * @param layer the policy that wrote it
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Lapse(
    String name,
    String says,
    Triggers triggers,
    Does does,
    String layer,
    Rule.Backing backing,
    Place place) {

  /**
   * What sets a lapse off: any one of these.
   *
   * @param events something that happened
   * @param clock time
   * @param uses the next use of the tube, by what goes down
   * @param feedModes time and uses count only while feed goes down in one of these ways; empty for
   *     any
   * @param seen something that is seen
   * @param byHand why a person judges it, where nothing can be watched
   */
  public record Triggers(
      Set<String> events,
      Optional<Clock> clock,
      Set<String> uses,
      Set<FeedMode> feedModes,
      Optional<Condition> seen,
      Optional<String> byHand) {
    public Triggers {
      events = Ordered.set(events);
      uses = Ordered.set(uses);
      feedModes = Ordered.set(feedModes);
    }
  }

  /** Time that makes a check lapse. */
  public sealed interface Clock {}

  /**
   * So long after the check.
   *
   * @param value the value of the policy that says how long
   */
  public record Every(String value) implements Clock {}

  /**
   * When the next shift begins.
   *
   * @param windows the values of the policy that say when the shifts are
   */
  public record EachShift(List<String> windows) implements Clock {
    public EachShift {
      windows = List.copyOf(windows);
    }
  }

  /** What comes of a lapse. */
  public sealed interface Does {}

  /** A new check is needed. */
  public record Lapses() implements Does {}

  /**
   * The check does not stand for now; it stands again after one of these events.
   *
   * @param events the events
   */
  public record SuspendsUntil(Set<String> events) implements Does {
    public SuspendsUntil {
      events = Ordered.set(events);
    }
  }

  /** No check of this passing of the tube can stand any more. */
  public record Ends() implements Does {}
}
