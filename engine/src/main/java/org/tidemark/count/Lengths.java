package org.tidemark.count;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Counts;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;

/**
 * {@code mark-at-nose}, and that something is wrong when it has moved: the newest length outside
 * against the one that was taken when the tube was passed or confirmed.
 */
final class Lengths {
  static final String LIST = "lengths";
  private static final String MARK = "mark-at-nose";
  private static final String CHANGE = "any-change";
  private static final String OUTSIDE = "outside";
  private static final String TAKEN = "taken";
  private static final String MOVED = "moved";
  private static final String SAME = "same";
  private static final String NOT_RECORDED = "not-recorded";

  private final EffectivePolicy policy;
  private final List<Item> items;

  Lengths(EffectivePolicy policy, TubeRecord record) {
    this.policy = policy;
    this.items = record.items(LIST).stream().map(Item::new).toList();
  }

  Reduced reduce() {
    Set<String> mark = new LinkedHashSet<>(Set.of(SAME));
    for (Counts.Moved moved : policy.counts().moved()) {
      Set<String> both = new LinkedHashSet<>();
      Set<String> says = says(moved);
      mark.forEach(m -> says.forEach(s -> both.add(worse(m, s))));
      mark = both;
    }
    Map<String, Seen> known = new LinkedHashMap<>();
    Set<String> speaksOf = new LinkedHashSet<>(Set.of(MARK));
    known.put(MARK, Seen.options(mark));
    if (!mark.contains(SAME)) {
      speaksOf.add(CHANGE);
      known.put(CHANGE, Seen.option("some"));
    }
    return new Reduced(speaksOf, known);
  }

  private static String worse(String a, String b) {
    List<String> order = List.of(SAME, NOT_RECORDED, MOVED);
    return order.indexOf(a) >= order.indexOf(b) ? a : b;
  }

  /** What a comparison may come to, over all lengths that may be the two that it compares. */
  private Set<String> says(Counts.Moved moved) {
    Set<String> says = new LinkedHashSet<>();
    boolean recorded = items.stream().anyMatch(i -> i.is(TAKEN, moved.against()) == Truth.YES);
    if (!recorded) {
      says.add(NOT_RECORDED);
    }
    for (Item before : newest(i -> i.is(TAKEN, moved.against()))) {
      List<Item> later = newest(i -> i == before ? Truth.NO : i.is(TAKEN, "later"));
      if (later.isEmpty()) {
        says.add(NOT_RECORDED);
      }
      later.forEach(now -> says.addAll(says(moved, before, now)));
    }
    return says;
  }

  /** What a length is taken to be. */
  private interface Kind {
    Truth of(Item item);
  }

  /** The lengths of a kind that may be its newest. */
  private List<Item> newest(Kind kind) {
    return items.stream()
        .filter(i -> kind.of(i) != Truth.NO)
        .filter(
            i ->
                items.stream()
                    .filter(other -> kind.of(other) == Truth.YES)
                    .noneMatch(other -> other.after(i)))
        .toList();
  }

  private Set<String> says(Counts.Moved moved, Item before, Item now) {
    Optional<Seen> one = before.written().seen(OUTSIDE).filter(s -> s.from().isPresent());
    Optional<Seen> two = now.written().seen(OUTSIDE).filter(s -> s.from().isPresent());
    if (one.isEmpty() || two.isEmpty()) {
      return Set.of(SAME, MOVED);
    }
    Findings change =
        Findings.NONE.with(
            OUTSIDE, new Findings.Entry(difference(one.get(), two.get()), now.written().place()));
    TubeRecord.Item item = new TubeRecord.Item(now.written().at(), change, now.written().place());
    return switch (moved.given().accept(new Fits(policy, item))) {
      case YES -> Set.of(MOVED);
      case NO -> Set.of(SAME);
      case MAYBE -> Set.of(SAME, MOVED);
    };
  }

  /** By how much two lengths differ, in or out. */
  private static Seen difference(Seen one, Seen two) {
    BigDecimal up = two.to().orElseThrow().subtract(one.from().orElseThrow());
    BigDecimal down = one.to().orElseThrow().subtract(two.from().orElseThrow());
    BigDecimal least = BigDecimal.ZERO.max(up.negate()).max(down.negate());
    return Seen.between(least, up.max(down));
  }
}
