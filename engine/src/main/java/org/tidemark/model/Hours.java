package org.tidemark.model;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * When somebody can be reached: from one time to another on some days of the week. A window that
 * passes midnight belongs to the day on which it begins.
 *
 * @param days the days, in the order of the week
 * @param from the first minute
 * @param until the minute after the last
 */
public record Hours(List<DayOfWeek> days, LocalTime from, LocalTime until) {
  /** The minutes of a week. */
  public static final int WEEK = 7 * 24 * 60;

  private static final int DAY = 24 * 60;

  public Hours {
    days = days.stream().sorted().distinct().toList();
  }

  public boolean passesMidnight() {
    return !until.isAfter(from);
  }

  /** The minutes of the week, from Monday at 00:00. */
  public BitSet minutes() {
    BitSet minutes = new BitSet(WEEK);
    int length = Math.floorMod(minute(until) - minute(from), DAY);
    for (DayOfWeek day : days) {
      int begins = (day.getValue() - 1) * DAY + minute(from);
      for (int i = 0; i < length; i++) {
        minutes.set((begins + i) % WEEK);
      }
    }
    return minutes;
  }

  private static int minute(LocalTime time) {
    return time.getHour() * 60 + time.getMinute();
  }

  /** A minute of the week in words, such as {@code Saturday 18:00}. */
  public static String moment(int minute) {
    return name(DayOfWeek.of(minute / DAY + 1))
        + " "
        + clock(LocalTime.ofSecondOfDay(minute % DAY * 60L));
  }

  /** In words, such as {@code 08:00 to 18:00, Monday to Friday}. */
  public String words() {
    String next = passesMidnight() ? " the next day" : "";
    return clock(from) + " to " + clock(until) + next + ", " + which();
  }

  private String which() {
    if (days.size() == 7) {
      return "every day";
    }
    DayOfWeek first = days.get(0);
    DayOfWeek last = days.get(days.size() - 1);
    boolean inARow = last.getValue() - first.getValue() == days.size() - 1 && days.size() > 2;
    return inARow
        ? name(first) + " to " + name(last)
        : days.stream().map(Hours::name).collect(Collectors.joining(", "));
  }

  private static String name(DayOfWeek day) {
    return day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT);
  }

  private static String clock(LocalTime time) {
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }
}
