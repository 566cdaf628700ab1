package org.tidemark.model;

import java.util.Map;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * Something that comes more than once, such as readings of an X-ray.
 *
 * @param name its name in a tube's record
 * @param fields what is written of each item
 * @param place where it is written
 */
public record ListKind(String name, Map<String, Domain> fields, Place place) {
  public ListKind {
    fields = Ordered.map(fields);
  }
}
