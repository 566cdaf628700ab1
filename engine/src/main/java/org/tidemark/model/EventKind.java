package org.tidemark.model;

import java.util.Optional;
import org.tidemark.source.Place;

/**
 * Something that happens to a tube, a patient or an order.
 *
 * @param name its name in a tube's record
 * @param says it in words, as they follow after "after", such as {@code the patient vomited}
 * @param means what it is to the tube, if it is more than something a policy may speak of
 * @param use what goes down with it, such as {@code feed}; only for the meanings of a use
 * @param feedMode how that feed goes down, if the event says so
 * @param place where it is written
 */
public record EventKind(
    String name,
    String says,
    Optional<Means> means,
    Optional<String> use,
    Optional<FeedMode> feedMode,
    Place place) {

  /** An event that only policies give a meaning to. */
  public EventKind(String name, String says, Place place) {
    this(name, says, Optional.empty(), Optional.empty(), Optional.empty(), place);
  }

  /** Whether it is one of these. */
  public boolean is(Means wanted) {
    return means.isPresent() && means.get() == wanted;
  }

  /** Whether something begins to go down with it. */
  public boolean beginsUse() {
    return is(Means.USE) || is(Means.USE_BEGINS);
  }

  /** What an event is to the tube, whatever a policy says of it. */
  public enum Means implements Worded {
    /** A tube was passed: what was known of an earlier passing is known of another tube. */
    PASSED,
    /** The tube is no longer in. */
    OUT,
    /** A check of the position that counts was recorded. */
    CHECKED,
    /** Something went down at once. */
    USE,
    /** Something began to go down, and goes on. */
    USE_BEGINS,
    /** What goes down is paused. */
    USE_PAUSES,
    /** What went down has ended. */
    USE_ENDS,
    /** A container of feed was hung. */
    HUNG,
    /** The container was taken down. */
    TAKEN_DOWN
  }
}
