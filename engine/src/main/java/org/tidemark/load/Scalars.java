package org.tidemark.load;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Reads numbers, dates and times from text: one plain form each, and a helpful word about every
 * other.
 */
final class Scalars {
  private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?");
  private static final Pattern COMMA = Pattern.compile("(-?[0-9]+),([0-9]+)");
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*([\\p{L}%\\u00B0/][\\p{L}0-9%\\u00B0/^]*)");
  private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
  private static final Pattern TIME = Pattern.compile("([0-9]{2}):([0-9]{2})");

  private Scalars() {}

  /** A plain decimal number: digits, and one point if there are decimals. */
  static Optional<BigDecimal> number(Located<String> text, String unit, Problems problems) {
    if (NUMBER.matcher(text.value()).matches()) {
      return Optional.of(new BigDecimal(text.value()));
    }
    problems.add(notANumber(text, unit));
    return Optional.empty();
  }

  static boolean looksLikeNumber(String text) {
    return !text.isEmpty() && (Character.isDigit(text.charAt(0)) || NUMBER.matcher(text).matches());
  }

  private static Diagnostic notANumber(Located<String> text, String unit) {
    String typed = text.value();
    Matcher comma = COMMA.matcher(typed);
    if (comma.matches()) {
      return Diagnostic.error(
              DiagnosticCode.DECIMAL_COMMA, text.span(), "`" + typed + "` has a comma")
          .help("write " + comma.group(1) + "." + comma.group(2) + " with a point");
    }
    Matcher pasted = NUMBER_AND_UNIT.matcher(typed);
    if (pasted.matches() && !pasted.group(2).equals("e") && !typed.startsWith("0x")) {
      return withUnit(text, pasted.group(1), unit);
    }
    return Diagnostic.error(
            DiagnosticCode.NOT_A_NUMBER, text.span(), "`" + typed + "` is not a plain number")
        .help(
            "write digits, and one point if there are decimals, such as 5.5; limits in words go in the field's name: at-most, below, at-least, above");
  }

  private static Diagnostic withUnit(Located<String> text, String number, String unit) {
    String field = unit.isEmpty() ? "" : "; the unit here is " + unit + " already";
    return Diagnostic.error(
            DiagnosticCode.UNIT_IN_NUMBER,
            text.span(),
            "`" + text.value() + "` is a number with something behind it")
        .help("write the number alone: " + number + field);
  }

  /** A day, as year-month-day; every other order of day and month is refused, not guessed at. */
  static Optional<LocalDate> date(Located<String> text, Problems problems) {
    Matcher date = DATE.matcher(text.value());
    if (date.matches()) {
      return day(date, text, problems);
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.BAD_DATE,
                text.span(),
                "`" + text.value() + "` is not a date of the form year-month-day")
            .help("write the thirty-first of March 2026 as 2026-03-31"));
    return Optional.empty();
  }

  private static Optional<LocalDate> day(Matcher date, Located<String> text, Problems problems) {
    try {
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(date.group(1)),
              Integer.parseInt(date.group(2)),
              Integer.parseInt(date.group(3))));
    } catch (DateTimeException noSuchDay) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_DATE, text.span(), "there is no day `" + text.value() + "`")
              .help("check the month and the day"));
      return Optional.empty();
    }
  }

  /** A time of day, as hours:minutes. */
  static Optional<LocalTime> time(Located<String> text, Problems problems) {
    Matcher time = TIME.matcher(text.value());
    if (time.matches()) {
      int hour = Integer.parseInt(time.group(1));
      int minute = Integer.parseInt(time.group(2));
      if (hour < 24 && minute < 60) {
        return Optional.of(LocalTime.of(hour, minute));
      }
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.BAD_TIME,
                text.span(),
                "`" + text.value() + "` is not a time of the form hours:minutes")
            .help("write nine in the evening as \"21:00\""));
    return Optional.empty();
  }

  /** A whole number of at least one. */
  static Optional<Integer> count(Located<String> text, Problems problems) {
    Optional<BigDecimal> number = number(text, "", problems);
    if (number.isPresent() && (number.get().scale() > 0 || number.get().signum() <= 0)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.OUT_OF_RANGE,
                  text.span(),
                  "`" + text.value() + "` is not a whole number of 1 or more")
              .help("editions count 1, 2, 3 and so on"));
      return Optional.empty();
    }
    return number.map(BigDecimal::intValueExact);
  }
}
