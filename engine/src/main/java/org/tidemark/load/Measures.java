package org.tidemark.load;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * Reads a number as a reading of a measure: a plain number, in range, and one that the measure can
 * show.
 */
final class Measures {
  private Measures() {}

  static Optional<BigDecimal> reading(
      Located<String> text, Finding finding, Domain.Measure measure, Problems problems) {
    return Scalars.number(text, measure.unit(), problems)
        .filter(number -> fits(number, text.span(), finding, measure, problems));
  }

  /** Whether the measure can show the number; reported when it cannot. */
  static boolean fits(
      BigDecimal number, Span at, Finding finding, Domain.Measure measure, Problems problems) {
    if (!measure.inRange(number)) {
      problems.add(outOfRange(number, at, finding, measure));
      return false;
    }
    if (!measure.onStep(number)) {
      problems.add(offStep(number, at, finding, measure));
      return false;
    }
    return true;
  }

  private static Diagnostic outOfRange(
      BigDecimal number, Span at, Finding finding, Domain.Measure measure) {
    return Diagnostic.error(
            DiagnosticCode.OUT_OF_RANGE,
            at,
            "`" + finding.name() + "` cannot be " + number.toPlainString())
        .help(
            "it goes from "
                + measure.print(measure.lowest())
                + " to "
                + measure.print(measure.highest())
                + " "
                + measure.unit());
  }

  private static Diagnostic offStep(
      BigDecimal number, Span at, Finding finding, Domain.Measure measure) {
    BigDecimal below =
        measure.number(number.divide(measure.step(), 0, RoundingMode.FLOOR).longValueExact());
    BigDecimal above = below.add(measure.step());
    return Diagnostic.error(
            DiagnosticCode.OFF_STEP,
            at,
            "`"
                + finding.name()
                + "` is read in steps of "
                + measure.step().toPlainString()
                + ", and "
                + number.toPlainString()
                + " lies between two")
        .help(
            "write "
                + measure.print(below)
                + " or "
                + measure.print(above)
                + "; a reading between the two is written as {at-least: "
                + measure.print(below)
                + ", at-most: "
                + measure.print(above)
                + "}");
  }
}
