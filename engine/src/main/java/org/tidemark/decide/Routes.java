package org.tidemark.decide;

import java.util.List;
import java.util.Optional;

/**
 * How an unfinished case can be settled.
 *
 * @param fewest the fewest findings that settle it once they are known, whatever they are, in
 *     asking order; what hangs on another is to be asked only where it applies. Empty when that
 *     could not be worked out
 * @param ways for each outcome that is still possible, one way to reach it
 */
public record Routes(Optional<List<Need>> fewest, List<Way> ways) {
  public Routes {
    fewest = fewest.map(List::copyOf);
    ways = List.copyOf(ways);
  }
}
