package org.tidemark.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * Something that comes more than once, such as readings of an X-ray.
 *
 * @param name its name in a tube's record
 * @param one one of its items, in words
 * @param times its times beside {@code at}
 * @param fields what is written of each item
 * @param place where it is written
 */
public record ListKind(
    String name, String one, List<String> times, Map<String, Domain> fields, Place place) {
  public ListKind {
    times = List.copyOf(times);
    fields = Ordered.map(fields);
  }

  /** A field as a finding, so that it is read and compared as one. */
  public Optional<Finding> field(String field) {
    return Optional.ofNullable(fields.get(field))
        .map(
            domain ->
                new Finding(
                    field,
                    "",
                    domain,
                    new Worse.Neither(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    BigDecimal.ZERO,
                    Optional.empty(),
                    Optional.empty(),
                    place));
  }
}
