package org.tidemark.load;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;

/**
 * Reads numbers, dates and times from text: one plain form each, and a helpful word about every
 * other.
 */
final class Scalars {
  private static final Pattern NUMBER =
      Pattern.compile("(?!-0+(\\.0+)?$)-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?");
  private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
  private static final Pattern TIME = Pattern.compile("([0-9]{2}):([0-9]{2})");

  /** No policy is older; a smaller year is a slip of the hand. */
  private static final int EARLIEST_YEAR = 1900;

  private Scalars() {}

  /** A plain decimal number: digits, and one point if there are decimals. */
  static Optional<BigDecimal> number(Located<String> text, String unit, Problems problems) {
    if (isPlain(text.value())) {
      return Optional.of(new BigDecimal(text.value()));
    }
    problems.add(NumberHelp.explain(text, unit));
    return Optional.empty();
  }

  static boolean looksLikeNumber(String text) {
    return !text.isEmpty() && (Character.isDigit(text.charAt(0)) || isPlain(text));
  }

  static boolean isPlain(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** A day, as year-month-day; every other order of day and month is refused, not guessed at. */
  static Optional<LocalDate> date(Located<String> text, Problems problems) {
    Matcher date = DATE.matcher(text.value());
    if (!date.matches()) {
      String what = Typed.shown(text.value()) + " is not a date of the form year-month-day";
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_DATE, text.span(), what + Typed.oddCharacter(text.value()))
              .help("write the thirty-first of March 2026 as 2026-03-31"));
      return Optional.empty();
    }
    Optional<LocalDate> day = day(date);
    if (day.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_DATE, text.span(), "there is no day `" + text.value() + "`")
              .help("check the year, the month and the day"));
    }
    return day;
  }

  private static Optional<LocalDate> day(Matcher date) {
    int year = Integer.parseInt(date.group(1));
    int month = Integer.parseInt(date.group(2));
    int day = Integer.parseInt(date.group(3));
    boolean exists =
        year >= EARLIEST_YEAR
            && month >= 1
            && month <= 12
            && day >= 1
            && day <= YearMonth.of(year, month).lengthOfMonth();
    return exists ? Optional.of(LocalDate.of(year, month, day)) : Optional.empty();
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
                Typed.shown(text.value()) + " is not a time of the form hours:minutes")
            .help("write nine in the evening as \"21:00\""));
    return Optional.empty();
  }

  /** A whole number of at least one. */
  static Optional<Integer> count(Located<String> text, Problems problems) {
    return count(text, "editions count 1, 2, 3 and so on", problems);
  }

  static Optional<Integer> count(Located<String> text, String help, Problems problems) {
    Optional<BigDecimal> number = number(text, "", problems);
    if (number.isPresent() && (number.get().scale() > 0 || number.get().signum() <= 0)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.OUT_OF_RANGE,
                  text.span(),
                  Typed.shown(text.value()) + " is not a whole number of 1 or more")
              .help(help));
      return Optional.empty();
    }
    return number.map(BigDecimal::intValueExact);
  }
}
