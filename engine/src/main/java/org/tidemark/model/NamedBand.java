package org.tidemark.model;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * A stretch of a measure with a name of its own.
 *
 * @param name its name in the policy
 * @param of the measure's name
 * @param band the stretch
 * @param notStated what the source leaves unsaid about it; such a band is a known gap
 * @param relation how it must lie to another band
 * @param sources where it is published
 * @param place where it is written
 */
public record NamedBand(
    String name,
    String of,
    Band band,
    Optional<String> notStated,
    Optional<Relation> relation,
    List<String> sources,
    Place place) {
  public NamedBand {
    sources = List.copyOf(sources);
  }

  /** How a band lies to another; checked when the policy is loaded. */
  public enum Kind implements Worded {
    INSIDE,
    STRADDLES
  }

  /**
   * A claim about two bands.
   *
   * @param kind how this one lies to the other
   * @param other the other's name
   */
  public record Relation(Kind kind, String other) {}
}
