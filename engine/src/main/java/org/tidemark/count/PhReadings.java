package org.tidemark.count;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;

/**
 * {@code ph} and what goes with it: those of the newest reading of this check that counts. A newer
 * reading that the policy refuses to count is still one of the possibilities, so that a doubtful
 * bad reading cannot be left out in favour of an older good one.
 */
final class PhReadings {
  static final String LIST = "ph-readings";
  private static final String ASPIRATE = "aspirate";
  private static final List<String> FINDINGS =
      List.of(ASPIRATE, "strip", "ph", "ph-readers", "aspirate-volume");

  private final EffectivePolicy policy;
  private final List<Item> items = new ArrayList<>();
  private final NotCounted notCounted;
  private final Map<Item, Truth> counts = new LinkedHashMap<>();

  PhReadings(EffectivePolicy policy, TubeRecord record) {
    this.policy = policy;
    this.notCounted = new NotCounted(policy, LIST, "ph");
    Drops drops = new Drops(policy, notCounted);
    for (TubeRecord.Item written : record.items(LIST)) {
      Item item = new Item(written);
      Truth earlier = item.is("check", "earlier");
      if (earlier == Truth.YES) {
        notCounted.because(item, "It was taken for an earlier check.");
      } else {
        items.add(item);
        counts.put(item, earlier.or(dropped(item, drops)).not());
      }
    }
  }

  /** That nothing came is no reading, and no strip is asked for. */
  private static Truth dropped(Item item, Drops drops) {
    Truth fluid = fluidCame(item);
    return fluid == Truth.NO ? Truth.NO : fluid.and(drops.dropped(LIST, item));
  }

  /** A reading of a strip says that fluid came. */
  private static Truth fluidCame(Item item) {
    return read(item) ? Truth.YES : item.is(ASPIRATE, "obtained");
  }

  private static boolean read(Item item) {
    return item.written().seen(ASPIRATE).isEmpty()
        && item.written().seen("ph").flatMap(Seen::from).isPresent();
  }

  Reduced reduce(List<DoesNotCount> refused) {
    refused.addAll(notCounted.all());
    Map<String, Seen> known = findings();
    Set<String> speaksOf = new LinkedHashSet<>(FINDINGS);
    if (!policy.counts().repeats().isEmpty()) {
      speaksOf.add(Repeats.FINDING);
      new Repeats(policy, counts).of(newest()).ifPresent(s -> known.put(Repeats.FINDING, s));
    }
    return new Reduced(speaksOf, known);
  }

  /** What is known of each finding; a finding that may be anything is left out. */
  private Map<String, Seen> findings() {
    boolean surely = counts.values().stream().anyMatch(t -> t == Truth.YES);
    List<Item> newest = newest();
    Map<String, Seen> found = new LinkedHashMap<>();
    for (String finding : FINDINGS) {
      List<Optional<Seen>> all = new ArrayList<>();
      newest.forEach(i -> all.add(seen(i, finding)));
      if (!surely && finding.equals(ASPIRATE)) {
        all.add(Optional.of(Seen.option("not-attempted")));
      }
      if (!all.isEmpty() && all.stream().allMatch(Optional::isPresent)) {
        all.stream()
            .flatMap(Optional::stream)
            .reduce(PhReadings::either)
            .ifPresent(s -> found.put(finding, s));
      }
    }
    return found;
  }

  private List<Item> newest() {
    boolean some = counts.values().stream().anyMatch(t -> t != Truth.NO);
    return some ? items.stream().filter(this::mayBeNewest).toList() : List.of();
  }

  /** Nothing that surely counts was surely taken after it. */
  private boolean mayBeNewest(Item item) {
    return items.stream()
        .filter(other -> other != item && counts.get(other) == Truth.YES)
        .noneMatch(other -> other.after(item));
  }

  private static Optional<Seen> seen(Item item, String finding) {
    return finding.equals(ASPIRATE) && read(item)
        ? Optional.of(Seen.option("obtained"))
        : item.written().seen(finding);
  }

  private static Seen either(Seen a, Seen b) {
    TreeSet<String> options = new TreeSet<>(a.options());
    options.addAll(b.options());
    return new Seen(options, end(a.from(), b.from(), true), end(a.to(), b.to(), false));
  }

  private static Optional<BigDecimal> end(
      Optional<BigDecimal> a, Optional<BigDecimal> b, boolean lower) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.or(() -> b);
    }
    return Optional.of(lower ? a.get().min(b.get()) : a.get().max(b.get()));
  }
}
