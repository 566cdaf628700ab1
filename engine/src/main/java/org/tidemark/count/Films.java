package org.tidemark.count;

import java.time.LocalDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Counts;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;

/**
 * {@code film}: the worst wrong place that anybody read wins; stomach needs all that the policy
 * asks; an unread film never counts.
 */
final class Films {
  static final String LIST = "film-readings";
  static final String FINDING = "film";

  /** From the least to the most telling; the later one wins. */
  private static final List<String> ORDER =
      List.of(
          "none",
          "requested",
          "not-read",
          "not-enough",
          "stomach",
          "gullet",
          "airway",
          "chest",
          "skull");

  private static final Set<String> RESULTS =
      Set.of("stomach", "gullet", "airway", "chest", "skull", "cannot-tell", "not-recorded");
  private static final Set<String> WRONG_PLACES = Set.of("gullet", "airway", "chest", "skull");
  private static final Set<String> STATES = Set.of("requested", "taken", "read");

  private final EffectivePolicy policy;
  private final List<Item> items;
  private final NotCounted notCounted;

  Films(EffectivePolicy policy, TubeRecord record) {
    this.policy = policy;
    this.items = record.items(LIST).stream().map(Item::new).toList();
    this.notCounted = new NotCounted(policy, LIST, FINDING);
  }

  Reduced reduce(List<DoesNotCount> refused) {
    Reduced reduced = new Reduced(Set.of(FINDING), Map.of(FINDING, film()));
    refused.addAll(notCounted.all());
    return reduced;
  }

  /** Every answer that is possible over all readings. */
  private Seen film() {
    Set<String> possible = new LinkedHashSet<>(Set.of("none"));
    for (Item item : items) {
      Set<String> worse = new LinkedHashSet<>();
      Set<String> says = says(item);
      possible.forEach(p -> says.forEach(s -> worse.add(later(p, s))));
      possible = worse;
    }
    return Seen.options(possible);
  }

  private static String later(String a, String b) {
    return ORDER.indexOf(a) >= ORDER.indexOf(b) ? a : b;
  }

  /** What one reading may come to. */
  private Set<String> says(Item item) {
    Truth gone = gone(item);
    Set<String> says = new LinkedHashSet<>();
    if (gone != Truth.NO) {
      says.add("none");
    }
    if (gone != Truth.YES) {
      Set<String> states = states(item);
      states.forEach(state -> says.addAll(says(item, state)));
      if (!states.contains("read") && says.stream().noneMatch(WRONG_PLACES::contains)) {
        notCounted.because(item, "It has not been read.");
      }
    }
    return says;
  }

  /** A result without a state was read; with one, the state is believed. */
  private static Set<String> states(Item item) {
    boolean result = item.written().seen("result").isPresent();
    return item.options("state", result ? Set.of("read") : STATES);
  }

  private Set<String> says(Item item, String state) {
    if (!state.equals("read")) {
      return unread(item, state.equals("requested") ? "requested" : "not-read");
    }
    Set<String> says = new LinkedHashSet<>();
    for (String result : item.options("result", RESULTS)) {
      switch (result) {
        case "stomach" -> says.addAll(stomach(item));
        default -> says.add(WRONG_PLACES.contains(result) ? result : "not-enough");
      }
    }
    return says;
  }

  /** What stands beside an X-ray that nobody has read never opens the way; trouble still counts. */
  private static Set<String> unread(Item item, String word) {
    Set<String> says = new LinkedHashSet<>();
    for (String result : item.options("result", Set.of("not-recorded"))) {
      says.add(WRONG_PLACES.contains(result) ? result : word);
    }
    return says;
  }

  /** Good news needs a reader and all else that the policy asks. */
  private Set<String> stomach(Item item) {
    Truth counts = Truth.YES;
    if (policy.counts().needAbout("reader").isEmpty()) {
      notCounted.because(item, "This policy does not say who may read an X-ray.");
      counts = Truth.NO;
    }
    for (Counts.Criterion need : policy.counts().stomachNeeds()) {
      Truth has = need.given().accept(new Fits(policy, item.written()));
      if (has != Truth.YES) {
        notCounted.by(need, item, has == Truth.NO);
      }
      counts = counts.and(has);
    }
    Set<String> says = new LinkedHashSet<>();
    if (counts != Truth.NO) {
      says.add("stomach");
    }
    if (counts != Truth.YES) {
      says.add("not-enough");
    }
    return says;
  }

  /** Of another passing, another check or another person; or replaced. */
  private Truth gone(Item item) {
    Truth other =
        said(item, item.is("passing", "earlier"), "It is of an earlier passing of the tube.")
            .or(said(item, item.is("check", "earlier"), "It was taken for an earlier check."))
            .or(said(item, item.is("this-patient", "no"), "It is not this patient's."));
    Truth replaced =
        Truth.any(items.stream().filter(i -> i != item).map(i -> replaces(i, item)).toList());
    return other.or(said(item, replaced, "A later version of this report replaces it."));
  }

  private Truth said(Item item, Truth so, String because) {
    if (so == Truth.YES) {
      notCounted.because(item, because);
    }
    return so;
  }

  /** An amended report of the same X-ray by the same kind of reader, read later. */
  private static Truth replaces(Item amended, Item first) {
    return amended
        .is("report", "amended")
        .and(same(amended.written().at(), first.written().at()))
        .and(sameReader(amended, first))
        .and(later(amended, first));
  }

  private static Truth same(Optional<LocalDateTime> a, Optional<LocalDateTime> b) {
    return a.isEmpty() || b.isEmpty() ? Truth.MAYBE : Truth.of(a.equals(b), !a.equals(b));
  }

  private static Truth sameReader(Item a, Item b) {
    Optional<Seen> one = a.written().seen("reader");
    Optional<Seen> two = b.written().seen("reader");
    if (one.isEmpty() || two.isEmpty()) {
      return Truth.MAYBE;
    }
    boolean mayBe = one.get().options().stream().anyMatch(two.get().options()::contains);
    boolean mayNot = one.get().options().size() > 1 || two.get().options().size() > 1 || !mayBe;
    return Truth.of(mayBe, mayNot);
  }

  private static Truth later(Item amended, Item first) {
    Optional<LocalDateTime> one = amended.written().time("read-at");
    Optional<LocalDateTime> two = first.written().time("read-at");
    Truth after =
        one.isEmpty() || two.isEmpty()
            ? Truth.MAYBE
            : Truth.of(one.get().isAfter(two.get()), !one.get().isAfter(two.get()));
    return first.is("report", "first").or(after);
  }
}
