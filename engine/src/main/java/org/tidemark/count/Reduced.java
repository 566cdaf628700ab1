package org.tidemark.count;

import java.util.Map;
import java.util.Set;
import org.tidemark.model.Seen;
import org.tidemark.source.Ordered;

/**
 * What one list comes to.
 *
 * @param speaksOf the findings that it settles or leaves open
 * @param known what is known of them; one that is not here may be anything
 */
record Reduced(Set<String> speaksOf, Map<String, Seen> known) {
  Reduced {
    speaksOf = Ordered.set(speaksOf);
    known = Ordered.map(known);
  }
}
