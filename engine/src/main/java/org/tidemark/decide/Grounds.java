package org.tidemark.decide;

import java.util.Optional;

/**
 * What lies behind an answer, in findings. Worked out on its own, since it costs far more than the
 * answer.
 *
 * @param forcedBy for a settled case: the fewest of the findings entered that force the answer
 * @param wouldProceed for a settled hold: the fewest findings that would let it proceed, as far as
 *     they can be found out, or found out anew
 */
public record Grounds(Optional<Least> forcedBy, Optional<Least> wouldProceed) {}
