package org.tidemark.print;

import java.time.LocalDate;
import java.util.List;

/** Dates as cards print them, the month as a word: 31 Mar 2026. */
final class CardDate {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private CardDate() {}

  static String words(LocalDate date) {
    return date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1) + " " + date.getYear();
  }
}
