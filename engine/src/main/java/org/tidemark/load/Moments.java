package org.tidemark.load;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;

/** Reads moments of a tube's record: a day and a time of day, by the local clock. */
final class Moments {
  private final Problems problems;

  Moments(Problems problems) {
    this.problems = problems;
  }

  Optional<LocalDateTime> read(Located<String> text) {
    String[] parts = text.value().split(" +", -1);
    if (parts.length != 2) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_TIME,
                  text.span(),
                  Typed.shown(text.value()) + " is not a day and a time of day")
              .help("write half past two on the first of September as 2026-09-01 14:30"));
      return Optional.empty();
    }
    Optional<LocalDate> day = Scalars.date(Located.of(parts[0], text.span()), problems);
    Optional<LocalTime> time = Scalars.time(Located.of(parts[1], text.span()), problems);
    return day.flatMap(d -> time.map(d::atTime));
  }

  /** A moment that cannot lie after the moment of the question. */
  Optional<LocalDateTime> past(Located<String> text, Optional<Located<LocalDateTime>> now) {
    Optional<LocalDateTime> moment = read(text);
    if (moment.isPresent() && now.isPresent() && moment.get().isAfter(now.get().value())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.IN_THE_FUTURE,
                  text.span(),
                  Typed.shown(text.value()) + " has not come yet")
              .and(now.get().span(), "this is now")
              .help("correct one of the two"));
      return Optional.empty();
    }
    return moment;
  }
}
