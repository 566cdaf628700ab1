package org.tidemark.decide;

import java.util.List;

/**
 * Something that was entered and must not count.
 *
 * @param finding the finding's name
 * @param found what was found, in words
 * @param because why it does not count
 * @param sources where that is published
 */
public record DoesNotCount(String finding, String found, String because, List<String> sources) {
  public DoesNotCount {
    sources = List.copyOf(sources);
  }
}
