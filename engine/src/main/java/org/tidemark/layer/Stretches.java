package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.Optional;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.Worse;

/** Settles the numbers at the ends of a band. */
final class Stretches {
  private Stretches() {}

  static Atom.Stretch of(EffectivePolicy policy, String finding, Band band) {
    Optional<BigDecimal> lower = band.lower().flatMap(b -> policy.number(b.limit()));
    Optional<BigDecimal> upper = band.upper().flatMap(b -> policy.number(b.limit()));
    Optional<Worse> worse = policy.vocabulary().finding(finding).map(Finding::worse);
    boolean lowIsSafe = worse.filter(w -> w instanceof Worse.Higher).isPresent();
    boolean highIsSafe = worse.filter(w -> w instanceof Worse.Lower).isPresent();
    boolean stated =
        stated(band.lower(), lower, lowIsSafe) && stated(band.upper(), upper, highIsSafe);
    return new Atom.Stretch(
        lower,
        band.lower().map(Bound::inclusive).orElse(true),
        upper,
        band.upper().map(Bound::inclusive).orElse(true),
        stated);
  }

  /**
   * Whether an end is as stated as it must be. An end that a source leaves open on the measure's
   * safe side stays open; on its worrying side, or where a value was to give it, nothing can lie in
   * the stretch.
   */
  private static boolean stated(
      Optional<Bound> end, Optional<BigDecimal> number, boolean safeSide) {
    return end.isEmpty()
        || number.isPresent()
        || (end.get().limit() instanceof Limit.NotStated && safeSide);
  }
}
