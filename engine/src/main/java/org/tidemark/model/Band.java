package org.tidemark.model;

import java.util.Optional;

/**
 * A stretch of a measure. An end that is absent is open.
 *
 * @param lower the lower end
 * @param upper the upper end
 */
public record Band(Optional<Bound> lower, Optional<Bound> upper) {
  /** The band that is one number. */
  public static Band exactly(Limit limit) {
    Optional<Bound> both = Optional.of(new Bound(limit, true));
    return new Band(both, both);
  }
}
