package org.tidemark.decide;

import java.util.Optional;

/**
 * What lies behind an answer, in findings. Worked out on its own, since it costs far more than the
 * answer.
 *
 * @param forcedBy for a settled case: the fewest of the findings entered that force the answer
 * @param wouldProceed for a settled hold: the fewest findings that would let it proceed, as far as
 *     they can be found out, or found out anew
 * @param routes how it can be settled, when that was asked for
 */
public record Grounds(
    Optional<Least> forcedBy, Optional<Least> wouldProceed, Optional<Routes> routes) {
  /** The same, and how the case can be settled. */
  public Grounds with(Routes more) {
    return new Grounds(forcedBy, wouldProceed, Optional.of(more));
  }
}
