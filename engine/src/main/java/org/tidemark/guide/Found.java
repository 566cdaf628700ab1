package org.tidemark.guide;

import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param reading how the query was understood
 * @param atThisNumber what the policy says at the number that was typed
 * @param hits best first
 * @param note what the reader should know, such as why nothing was found
 */
public record Found(
    QueryReading reading, Optional<String> atThisNumber, List<Hit> hits, Optional<String> note) {
  public Found {
    hits = List.copyOf(hits);
  }
}
