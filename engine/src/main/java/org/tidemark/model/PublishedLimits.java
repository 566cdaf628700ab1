package org.tidemark.model;

import java.math.BigDecimal;
import java.util.List;

/**
 * Between which numbers the limits of a measure lie that were read in publications. A policy may
 * have another limit; whoever approves it is told.
 *
 * @param atLeast the lowest
 * @param atMost the highest
 * @param sources where these two were read
 */
public record PublishedLimits(BigDecimal atLeast, BigDecimal atMost, List<String> sources) {
  public PublishedLimits {
    sources = List.copyOf(sources);
  }

  public boolean holds(BigDecimal limit) {
    return limit.compareTo(atLeast) >= 0 && limit.compareTo(atMost) <= 0;
  }
}
