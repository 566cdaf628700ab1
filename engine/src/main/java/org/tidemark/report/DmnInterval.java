package org.tidemark.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.layer.Atom;
import org.tidemark.model.Domain;

/**
 * A stretch of numbers as a test in DMN's expression language.
 *
 * @param lower its lower end
 * @param lowerIncluded whether that belongs to it
 * @param upper its upper end
 * @param upperIncluded whether that belongs to it
 */
record DmnInterval(
    BigDecimal lower, boolean lowerIncluded, BigDecimal upper, boolean upperIncluded) {

  /** Every number that a measure may have. */
  static DmnInterval all(Domain.Measure measure) {
    return new DmnInterval(measure.lowest(), true, measure.highest(), true);
  }

  /** The numbers of a measure in which a comparison holds; what is not stated holds for none. */
  static List<DmnInterval> of(Domain.Measure measure, Atom.Stretch stretch, boolean negated) {
    if (!stretch.stated()) {
      return List.of();
    }
    return negated ? outside(measure, stretch) : inside(measure, stretch).stream().toList();
  }

  private static Optional<DmnInterval> inside(Domain.Measure measure, Atom.Stretch stretch) {
    DmnInterval all = all(measure);
    return all.and(
        new DmnInterval(
            stretch.lower().orElse(all.lower),
            stretch.lower().isEmpty() || stretch.lowerIncluded(),
            stretch.upper().orElse(all.upper),
            stretch.upper().isEmpty() || stretch.upperIncluded()));
  }

  private static List<DmnInterval> outside(Domain.Measure measure, Atom.Stretch stretch) {
    DmnInterval all = all(measure);
    Optional<DmnInterval> below =
        stretch
            .lower()
            .flatMap(n -> all.and(new DmnInterval(all.lower, true, n, !stretch.lowerIncluded())));
    Optional<DmnInterval> above =
        stretch
            .upper()
            .flatMap(n -> all.and(new DmnInterval(n, !stretch.upperIncluded(), all.upper, true)));
    return Stream.concat(below.stream(), above.stream()).toList();
  }

  /** What lies in both; empty if no number does. */
  Optional<DmnInterval> and(DmnInterval other) {
    DmnInterval low = startsAfter(other) ? this : other;
    DmnInterval high = endsBefore(other) ? this : other;
    int order = low.lower.compareTo(high.upper);
    boolean some = order < 0 || (order == 0 && low.lowerIncluded && high.upperIncluded);
    return some
        ? Optional.of(new DmnInterval(low.lower, low.lowerIncluded, high.upper, high.upperIncluded))
        : Optional.empty();
  }

  private boolean startsAfter(DmnInterval other) {
    int order = lower.compareTo(other.lower);
    return order > 0 || (order == 0 && !lowerIncluded);
  }

  private boolean endsBefore(DmnInterval other) {
    int order = upper.compareTo(other.upper);
    return order < 0 || (order == 0 && !upperIncluded);
  }

  /** Such as {@code [1..5.5)}: a square bracket belongs to the end, a round one does not. */
  @Override
  public String toString() {
    return (lowerIncluded ? "[" : "(")
        + lower.toPlainString()
        + ".."
        + upper.toPlainString()
        + (upperIncluded ? "]" : ")");
  }
}
