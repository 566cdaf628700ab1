package org.tidemark.count;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Counts;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Seen;

/**
 * {@code checks-since}: whether an earlier reading of this check was too high, and whether the
 * policy's wait lies between it and the newest. A wait that is not stated is never kept.
 */
final class Repeats {
  static final String FINDING = "checks-since";

  private final EffectivePolicy policy;
  private final Map<Item, Truth> counts;

  Repeats(EffectivePolicy policy, Map<Item, Truth> counts) {
    this.policy = policy;
    this.counts = counts;
  }

  /** Over all readings that may be the newest; nothing when there is none. */
  Optional<Seen> of(List<Item> newest) {
    Set<String> may = new TreeSet<>();
    newest.forEach(n -> may.addAll(of(n)));
    return may.isEmpty() ? Optional.empty() : Optional.of(Seen.options(may));
  }

  private Set<String> of(Item newest) {
    Truth high = Truth.NO;
    Truth kept = Truth.NO;
    for (Item other : counts.keySet()) {
      if (other != newest) {
        for (Counts.Repeat repeat : policy.counts().repeats()) {
          Truth before = earlier(other, newest).and(tooHigh(other, repeat));
          high = high.or(before);
          kept = kept.or(before.and(kept(other, newest, repeat)));
        }
      }
    }
    Set<String> may = new TreeSet<>();
    if (kept != Truth.NO) {
      may.add("wait-kept");
    }
    if (kept != Truth.YES && high != Truth.NO) {
      may.add("wait-cut-short");
    }
    if (high != Truth.YES) {
      may.add("none");
    }
    return may;
  }

  private Truth tooHigh(Item item, Counts.Repeat repeat) {
    Truth here = counts.getOrDefault(item, Truth.MAYBE);
    return here.and(repeat.tooHigh().accept(new Fits(policy, item.written())));
  }

  private static Truth earlier(Item one, Item other) {
    return one.written().at().isEmpty() || other.written().at().isEmpty()
        ? Truth.MAYBE
        : Truth.of(other.after(one), !other.after(one));
  }

  private Truth kept(Item high, Item newest, Counts.Repeat repeat) {
    Optional<BigDecimal> wait = policy.value(repeat.apart()).flatMap(PolicyValue::number);
    Optional<LocalDateTime> from = high.written().at();
    Optional<LocalDateTime> to = newest.written().at();
    if (wait.isEmpty()) {
      return Truth.NO;
    }
    if (from.isEmpty() || to.isEmpty()) {
      return Truth.MAYBE;
    }
    ZonedDateTime began = ZonedDateTime.of(from.get(), zone());
    ZonedDateTime ended = ZonedDateTime.of(to.get(), zone());
    boolean surely =
        reaches(began.withLaterOffsetAtOverlap(), ended.withEarlierOffsetAtOverlap(), wait.get());
    boolean perhaps =
        reaches(began.withEarlierOffsetAtOverlap(), ended.withLaterOffsetAtOverlap(), wait.get());
    return Truth.of(perhaps, !surely);
  }

  private static boolean reaches(ZonedDateTime from, ZonedDateTime to, BigDecimal wait) {
    long minutes = Duration.between(from, to).toMinutes();
    return BigDecimal.valueOf(minutes).compareTo(wait) >= 0;
  }

  /** The clock that the policy lives by, so that a night of a changed clock is counted right. */
  private ZoneId zone() {
    return policy.header().clock().orElse(ZoneOffset.UTC);
  }
}
