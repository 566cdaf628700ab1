package org.tidemark.load;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Reads the ends of a band: {@code at-least}, {@code above}, {@code at-most}, {@code below}, or
 * {@code is}; never a sign.
 */
final class Bounds {
  static final List<String> KEYS = List.of("at-least", "above", "at-most", "below", "is");

  private final Known known;
  private final Problems problems;

  Bounds(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  /** The band that the fields spell out, for readings of a finding. */
  Band read(Fields fields, Finding finding, Domain.Measure measure) {
    Optional<Located<String>> exactly = fields.optionalText("is");
    if (exactly.isPresent()) {
      alone(fields);
      return Band.exactly(limit(exactly.get(), finding, measure));
    }
    Optional<Bound> lower = end(fields, "at-least", "above", finding, measure);
    Optional<Bound> upper = end(fields, "at-most", "below", finding, measure);
    if (lower.isEmpty() && upper.isEmpty()) {
      problems.add(
          Diagnostic.error(DiagnosticCode.MISSING_KEY, fields.span(), "no end of the band is given")
              .help("write at-least or above, at-most or below, or both"));
    }
    Band band = new Band(lower, upper);
    notReversed(band, fields);
    return band;
  }

  private void alone(Fields fields) {
    for (String other : List.of("at-least", "above", "at-most", "below")) {
      if (fields.has(other)) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.CANNOT_HOLD,
                    fields.key(other),
                    "`is` and `" + other + "` stand side by side")
                .help("keep `is` for one number alone, or the ends of a band"));
      }
    }
  }

  private Optional<Bound> end(
      Fields fields, String including, String excluding, Finding finding, Domain.Measure measure) {
    Optional<Located<String>> inclusive = fields.optionalText(including);
    Optional<Located<String>> exclusive = fields.optionalText(excluding);
    if (inclusive.isPresent() && exclusive.isPresent()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  exclusive.get().span(),
                  "`" + including + "` and `" + excluding + "` stand side by side")
              .help(
                  "keep one: `"
                      + including
                      + "` takes the number in, `"
                      + excluding
                      + "` leaves it out"));
    }
    Optional<Located<String>> text = inclusive.or(() -> exclusive);
    return text.map(t -> new Bound(limit(t, finding, measure), inclusive.isPresent()));
  }

  private Limit limit(Located<String> text, Finding finding, Domain.Measure measure) {
    String typed = text.value();
    if (typed.equals("not-stated")) {
      return new Limit.NotStated();
    }
    Optional<PolicyValue> value = known.value(typed);
    if (value.isPresent()) {
      checkUnit(value.get(), text, measure);
      value
          .filter(v -> v.unit().equals(measure.unit()))
          .ifPresent(
              v ->
                  v.number()
                      .ifPresent(
                          n -> Measures.fits(n, v.place().span(), finding, measure, problems)));
      return new Limit.Named(typed);
    }
    if (looksLikeName(typed)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_VALUE, text.span(), "no value is called `" + typed + "`")
              .help(Fields.suggest(typed, known.valueNames())));
      return new Limit.NotStated();
    }
    return Measures.reading(text, finding, measure, problems)
        .<Limit>map(Limit.Fixed::new)
        .orElseGet(Limit.NotStated::new);
  }

  private static boolean looksLikeName(String typed) {
    return !Scalars.looksLikeNumber(typed)
        && typed
            .chars()
            .allMatch(c -> Character.isLowerCase(c) || Character.isDigit(c) || c == '-');
  }

  private void checkUnit(PolicyValue value, Located<String> text, Domain.Measure measure) {
    boolean known = value.isStated() && !value.unit().isEmpty();
    if (known && !value.unit().equals(measure.unit())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_UNIT,
                  text.span(),
                  "`"
                      + value.name()
                      + "` is in "
                      + value.unit()
                      + ", and this is measured in "
                      + measure.unit())
              .and(value.place().span(), "the value stands here")
              .help("use a value in " + measure.unit()));
    }
  }

  private void notReversed(Band band, Fields fields) {
    Optional<BigDecimal> lower = band.lower().flatMap(b -> number(b.limit()));
    Optional<BigDecimal> upper = band.upper().flatMap(b -> number(b.limit()));
    if (lower.isEmpty() || upper.isEmpty()) {
      return;
    }
    int order = lower.get().compareTo(upper.get());
    boolean touching = band.lower().get().inclusive() && band.upper().get().inclusive();
    if (order > 0 || (order == 0 && !touching)) {
      problems.add(reversed(lower.get(), upper.get(), fields));
    }
  }

  private static Diagnostic reversed(BigDecimal lower, BigDecimal upper, Fields fields) {
    return Diagnostic.error(
            DiagnosticCode.REVERSED,
            fields.span(),
            "no number is from " + lower.toPlainString() + " to " + upper.toPlainString() + " here")
        .help("the lower end goes into at-least or above, the upper end into at-most or below");
  }

  /** The number behind a limit as far as this file and the layers below it know it. */
  private Optional<BigDecimal> number(Limit limit) {
    if (limit instanceof Limit.Fixed fixed) {
      return Optional.of(fixed.number());
    }
    return limit instanceof Limit.Named named
        ? known.value(named.value()).flatMap(PolicyValue::number)
        : Optional.empty();
  }
}
