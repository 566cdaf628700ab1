package org.tidemark.layer;

import java.util.BitSet;
import org.tidemark.model.Bound;
import org.tidemark.model.Domain;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * Checks that each band holds a reading that its measure can show, and lies to another as it says.
 */
final class BandChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  BandChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    policy.bands().forEach(this::check);
  }

  private void check(NamedBand band) {
    Readings readings = readings(band);
    BitSet here = in(band, readings);
    Atom.Stretch stretch = stretch(band);
    if (stretch.stated() && here.isEmpty() && band.notStated().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  band.place().span(),
                  "no reading of `" + band.of() + "` lies in `" + band.name() + "`")
              .help(
                  "check its two ends against the steps of the measure and the values they name"));
    }
    endNotStated(band);
    band.relation().ifPresent(r -> relation(band, r, here, readings));
  }

  private void endNotStated(NamedBand band) {
    boolean open =
        band.band().lower().filter(BandChecks::notStated).isPresent()
            || band.band().upper().filter(BandChecks::notStated).isPresent();
    if (open) {
      problems.add(
          Diagnostic.notice(
              DiagnosticCode.NO_END_STATED,
              band.place().span(),
              "one end of `" + band.name() + "` is not stated"));
    }
  }

  private static boolean notStated(Bound bound) {
    return bound.limit() instanceof Limit.NotStated;
  }

  private void relation(
      NamedBand band, NamedBand.Relation relation, BitSet here, Readings readings) {
    NamedBand other = policy.band(relation.other()).orElseThrow();
    BitSet there = in(other, readings);
    BitSet outside = (BitSet) here.clone();
    outside.andNot(there);
    boolean holds =
        relation.kind() == NamedBand.Kind.INSIDE
            ? outside.isEmpty()
            : !outside.isEmpty() && here.intersects(there);
    if (!holds) {
      String says =
          relation.kind() == NamedBand.Kind.INSIDE ? "lie inside" : "lie across an end of";
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAND_RELATION,
                  band.place().span(),
                  "`"
                      + band.name()
                      + "` should "
                      + says
                      + " `"
                      + other.name()
                      + "`, and holds "
                      + readings.words(here))
              .and(other.place().span(), "`" + other.name() + "` holds " + readings.words(there))
              .help("correct one of the two bands"));
    }
  }

  private Readings readings(NamedBand band) {
    return new Readings((Domain.Measure) policy.vocabulary().require(band.of()).domain());
  }

  private Atom.Stretch stretch(NamedBand band) {
    return Stretches.of(policy, band.of(), band.band());
  }

  private BitSet in(NamedBand band, Readings readings) {
    return readings.of(Atom.stretch(band.of(), stretch(band), false));
  }
}
