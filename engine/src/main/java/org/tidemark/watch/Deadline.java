package org.tidemark.watch;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.FeedMode;
import org.tidemark.model.Lapse;
import org.tidemark.model.PolicyValue;

/** The time at which a clock ends a check: it stands up to the minute before. */
final class Deadline {
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);
  private static final BigDecimal DAY = BigDecimal.valueOf(24 * 60);

  private final Lapse lapse;
  private final Optional<Long> minutes;
  private final List<LocalTime> begins;
  private final Clock clock;

  private Deadline(Lapse lapse, Optional<Long> minutes, List<LocalTime> begins, Clock clock) {
    this.lapse = lapse;
    this.minutes = minutes;
    this.begins = begins;
    this.clock = clock;
  }

  /** The deadline of a lapse that goes by a clock. A length that is not stated never ends. */
  static Optional<Deadline> of(EffectivePolicy policy, Lapse lapse, Clock clock) {
    Optional<Lapse.Clock> by = lapse.triggers().clock();
    if (by.isEmpty()) {
      return Optional.empty();
    }
    if (by.get() instanceof Lapse.Every every) {
      return policy
          .value(every.value())
          .flatMap(v -> minutes(v))
          .map(m -> new Deadline(lapse, Optional.of(m), List.of(), clock));
    }
    List<LocalTime> begins =
        ((Lapse.EachShift) by.get())
            .windows().stream().flatMap(w -> begins(policy, w).stream()).sorted().toList();
    return begins.isEmpty()
        ? Optional.empty()
        : Optional.of(new Deadline(lapse, Optional.empty(), begins, clock));
  }

  private static Optional<Long> minutes(PolicyValue value) {
    BigDecimal unit =
        switch (value.unit()) {
          case "h" -> HOUR;
          case "days" -> DAY;
          default -> BigDecimal.ONE;
        };
    return value.number().map(n -> n.multiply(unit).longValue());
  }

  private static Optional<LocalTime> begins(EffectivePolicy policy, String window) {
    return policy
        .value(window)
        .map(PolicyValue::content)
        .filter(PolicyValue.Window.class::isInstance)
        .map(w -> ((PolicyValue.Window) w).from());
  }

  Lapse lapse() {
    return lapse;
  }

  /** Whether it counts while feed goes down in this way. */
  boolean runs(FeedMode mode) {
    Set<FeedMode> modes = lapse.triggers().feedModes();
    return modes.isEmpty() || modes.contains(mode);
  }

  /** The first minute in which a check made at this minute no longer stands. */
  long after(long check) {
    if (check == Long.MIN_VALUE) {
      return check; // nobody knows how long ago: it may have ended already
    }
    if (minutes.isPresent()) {
      return check + minutes.get();
    }
    LocalDateTime hands = clock.hands(check);
    return begins.stream()
        .map(t -> next(hands, t))
        .map(clock::first)
        .filter(m -> m > check)
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static LocalDateTime next(LocalDateTime hands, LocalTime time) {
    LocalDateTime today = hands.toLocalDate().atTime(time);
    return today.isAfter(hands) ? today : today.plusDays(1);
  }
}
