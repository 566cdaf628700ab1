package org.tidemark.count;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;

/** Looks at one item of a list. */
final class Item {
  private final TubeRecord.Item written;

  Item(TubeRecord.Item written) {
    this.written = written;
  }

  TubeRecord.Item written() {
    return written;
  }

  /** Whether a choice is this option. */
  Truth is(String field, String option) {
    Optional<Seen> seen = written.seen(field);
    return seen.map(
            s ->
                Truth.of(
                    s.options().contains(option),
                    s.options().size() > 1 || !s.options().contains(option)))
        .orElse(Truth.MAYBE);
  }

  /** The options that a choice may be; those given when nothing is known. */
  Set<String> options(String field, Set<String> all) {
    return written.seen(field).map(Seen::options).orElseGet(() -> new TreeSet<>(all));
  }

  /** Whether it was surely made after another. */
  boolean after(Item other) {
    Optional<LocalDateTime> earlier = other.written().at();
    return written.at().isPresent()
        && earlier.isPresent()
        && written.at().get().isAfter(earlier.get());
  }

  /** The day and time, or the words for none. */
  String named(String one) {
    return written
        .at()
        .map(t -> "The " + one + " of " + When.at(t))
        .orElse("The " + one + " without a time");
  }
}
