package org.tidemark.model;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * What was written of one tube: readings that come more than once, and what happened when. Nothing
 * in it says whose tube it is.
 *
 * @param now the moment of the question, by the policy's local clock
 * @param lists items by list
 * @param events what happened, in the order in which it was written
 */
public record TubeRecord(
    Optional<LocalDateTime> now, Map<String, List<Item>> lists, List<Event> events) {
  public static final TubeRecord NONE = new TubeRecord(Optional.empty(), Map.of(), List.of());

  public TubeRecord {
    lists = Ordered.map(lists);
    events = List.copyOf(events);
  }

  /** The items of a list, in the order in which they were written. */
  public List<Item> items(String list) {
    return lists.getOrDefault(list, List.of());
  }

  public boolean isEmpty() {
    return lists.isEmpty() && events.isEmpty();
  }

  /**
   * One item of a list. A field or a time that is not there is not known.
   *
   * @param at when it was made, if that is recorded
   * @param times its other times, as far as they are recorded
   * @param fields what is known of it
   * @param place where it was entered
   */
  public record Item(
      Optional<LocalDateTime> at, Map<String, LocalDateTime> times, Findings fields, Place place) {
    public Item {
      times = Ordered.map(times);
    }

    /** An item with no other time. */
    public Item(Optional<LocalDateTime> at, Findings fields, Place place) {
      this(at, Map.of(), fields, place);
    }

    /** One of its other times, if it is recorded. */
    public Optional<LocalDateTime> time(String name) {
      return Optional.ofNullable(times.get(name));
    }

    /** What is known of one of its fields; nothing when it may be anything. */
    public Optional<Seen> seen(String field) {
      return fields.entry(field).map(Findings.Entry::seen);
    }
  }

  /**
   * Something that happened.
   *
   * @param from the first minute in which it may have happened, if that is recorded
   * @param to the last
   * @param what its kind
   * @param place where it was entered
   */
  public record Event(
      Optional<LocalDateTime> from, Optional<LocalDateTime> to, String what, Place place) {}
}
