package org.tidemark.count;

import java.time.LocalDateTime;
import java.util.Locale;
import org.tidemark.model.Days;

/** A moment in words, with the month as a word. */
final class When {
  private When() {}

  static String at(LocalDateTime moment) {
    return String.format(
        Locale.ROOT,
        "%s, %02d:%02d",
        Days.of(moment.toLocalDate()),
        moment.getHour(),
        moment.getMinute());
  }
}
