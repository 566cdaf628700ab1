package org.tidemark.watch;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Counts minutes by the clock that a policy lives by, so that an hour that the clock shows twice is
 * counted twice. A policy that names no clock counts by the hands alone.
 */
final class Clock {
  private static final int SECONDS = 60;

  private final ZoneId zone;

  Clock(Optional<ZoneId> zone) {
    this.zone = zone.orElse(ZoneOffset.UTC);
  }

  /** The first minute that the hands may mean. */
  long first(LocalDateTime hands) {
    return minute(ZonedDateTime.of(hands, zone).withEarlierOffsetAtOverlap());
  }

  /** The last minute that the hands may mean. */
  long last(LocalDateTime hands) {
    return minute(ZonedDateTime.of(hands, zone).withLaterOffsetAtOverlap());
  }

  private static long minute(ZonedDateTime moment) {
    return Math.floorDiv(moment.toEpochSecond(), SECONDS);
  }

  LocalDateTime hands(long minute) {
    return LocalDateTime.ofInstant(java.time.Instant.ofEpochSecond(minute * SECONDS), zone);
  }
}
