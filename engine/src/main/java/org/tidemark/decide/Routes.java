package org.tidemark.decide;

import java.util.List;

/**
 * How an unfinished case can be settled.
 *
 * @param fewest the fewest findings that settle it once they are known, whatever they are
 * @param ways for each outcome that is still possible, one way to reach it
 */
public record Routes(ToAsk fewest, List<Way> ways) {
  /** Nothing is left to find out. */
  static final Routes SETTLED = new Routes(new ToAsk.Found(List.of()), List.of());

  public Routes {
    ways = List.copyOf(ways);
  }
}
