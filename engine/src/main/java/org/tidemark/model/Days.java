package org.tidemark.model;

import java.time.LocalDate;
import java.time.Month;

/**
 * A day with the month as a word, so that nobody takes the month for the day. By hand, since the
 * JDK's formatter costs more start-up than the rest of an answer.
 */
public final class Days {
  private Days() {}

  public static String of(LocalDate day) {
    return day.getDayOfMonth() + " " + month(day.getMonth()) + " " + day.getYear();
  }

  private static String month(Month month) {
    String name = month.name();
    return name.charAt(0) + name.substring(1).toLowerCase(java.util.Locale.ROOT);
  }
}
