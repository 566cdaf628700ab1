package org.tidemark.count;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Seen;
import org.tidemark.model.Value;
import org.tidemark.watch.Watched;

/**
 * Minutes in the steps of a measure of hours. The steps that are over are right for every limit of
 * the kind "at least" and "below". Where a rule says "above" or "at most", a step that has only
 * begun may already matter, and stands beside.
 */
final class Hours {
  private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

  private final EffectivePolicy policy;
  private final String finding;
  private final Domain.Measure measure;

  Hours(EffectivePolicy policy, String finding, Domain.Measure measure) {
    this.policy = policy;
    this.finding = finding;
    this.measure = measure;
  }

  Seen of(Watched.Minutes minutes) {
    RoundingMode up = begunMatters() ? RoundingMode.CEILING : RoundingMode.FLOOR;
    return Seen.between(steps(minutes.least(), RoundingMode.FLOOR), steps(minutes.most(), up));
  }

  private BigDecimal steps(long minutes, RoundingMode rounding) {
    BigDecimal ticks =
        BigDecimal.valueOf(minutes).divide(MINUTES.multiply(measure.step()), 0, rounding);
    return new Value.Amount(ticks.multiply(measure.step()).min(measure.highest())).number();
  }

  private boolean begunMatters() {
    return policy.questions().stream()
        .flatMap(q -> q.rules().stream())
        .flatMap(r -> Alternatives.of(policy, r.given()).stream())
        .flatMap(List::stream)
        .filter(a -> a.finding().equals(finding))
        .flatMap(a -> a.stretch().stream())
        .anyMatch(Hours::endsWithin);
  }

  private static boolean endsWithin(Atom.Stretch stretch) {
    return (stretch.lower().isPresent() && !stretch.lowerIncluded())
        || (stretch.upper().isPresent() && stretch.upperIncluded());
  }
}
