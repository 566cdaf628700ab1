package org.tidemark.model;

import java.util.List;
import org.tidemark.source.Place;

/**
 * A yes-or-no finding that a policy makes out of others, one level deep.
 *
 * @param name its name
 * @param alternatives it holds when one of these does
 * @param standing how well it is backed
 * @param sources where it is published
 * @param place where it is written
 */
public record Term(
    String name,
    List<Condition> alternatives,
    Standing standing,
    List<String> sources,
    Place place) {
  public Term {
    alternatives = List.copyOf(alternatives);
    sources = List.copyOf(sources);
  }
}
