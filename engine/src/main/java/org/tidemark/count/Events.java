package org.tidemark.count;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Lapse;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.watch.Watch;
import org.tidemark.watch.Watched;

/** {@code confirmation} and what goes with it, from a tube's events and from what is seen now. */
final class Events {
  static final String KEY = "events";
  private static final String CONFIRMATION = "confirmation";
  private static final String HOURS = "hours-since-check";
  private static final String STANDING = "standing";
  private static final String LAPSED = "lapsed";

  private final EffectivePolicy policy;
  private final Findings entered;
  private final List<DoesNotCount> gone = new ArrayList<>();
  private final List<String> due = new ArrayList<>();

  Events(EffectivePolicy policy, Findings entered) {
    this.policy = policy;
    this.entered = entered;
  }

  /** What the events yield; nothing when their times leave too many orders open. */
  Optional<Reduced> reduce(TubeRecord record, LocalDateTime now) {
    return Watch.of(policy).look(record.events(), now).map(this::reduced);
  }

  List<DoesNotCount> gone() {
    return gone;
  }

  /** What to bear in mind of a check that may stand. */
  List<String> due() {
    return due;
  }

  private Reduced reduced(Watched watched) {
    watched.gone().forEach(g -> gone.add(said(g)));
    Set<String> words = new LinkedHashSet<>(watched.confirmation());
    Truth ended = words.contains(STANDING) ? seenNow() : Truth.NO;
    if (ended != Truth.NO) {
      words.add(LAPSED);
    }
    if (ended == Truth.YES) {
      words.remove(STANDING);
    }
    Map<String, Seen> known = new LinkedHashMap<>();
    known.put(CONFIRMATION, Seen.options(words));
    if (words.contains(STANDING)) {
      watched.due().forEach(d -> due.add(said(d)));
      policy.care().lapses().forEach(this::judged);
      watched.minutes().flatMap(this::hours).ifPresent(h -> known.put(HOURS, h));
    }
    return new Reduced(Set.of(CONFIRMATION, HOURS), known);
  }

  private Optional<Seen> hours(Watched.Minutes minutes) {
    return policy
        .vocabulary()
        .finding(HOURS)
        .map(Finding::domain)
        .filter(Domain.Measure.class::isInstance)
        .map(m -> new Hours(policy, HOURS, (Domain.Measure) m).of(minutes));
  }

  private DoesNotCount said(Watched.Gone lapse) {
    String check = lapse.check().map(t -> "The check of " + When.at(t)).orElse("The last check");
    return new DoesNotCount(CONFIRMATION, check, because(lapse), lapse.lapse().backing().sources());
  }

  private String because(Watched.Gone gone) {
    boolean waits = gone.lapse().does() instanceof Lapse.SuspendsUntil;
    String does = waits ? "stand for now" : "stand any more";
    String what = (gone.certain() ? "It does not " : "It may not ") + does;
    return what + since(gone) + ". " + policy.fill(gone.lapse().says());
  }

  private static String since(Watched.Gone gone) {
    Optional<String> at = gone.at().map(When::at);
    return gone.after().isPresent()
        ? ": " + gone.after().get() + at.map(t -> ", " + t).orElse("")
        : at.map(t -> " from " + t).orElse("");
  }

  private String said(Watched.Due due) {
    return "The check ends at " + When.at(due.by()) + ". " + policy.fill(due.lapse().says());
  }

  private void judged(Lapse lapse) {
    lapse
        .triggers()
        .byHand()
        .ifPresent(
            why ->
                due.add(
                    "No clock and no event shows this: judge it yourself. "
                        + policy.fill(lapse.says())));
  }

  /**
   * Whether something that is seen now ends the check, or may, where what was seen leaves it open.
   */
  private Truth seenNow() {
    Truth any = Truth.NO;
    for (Lapse lapse : policy.care().lapses()) {
      Truth seen = lapse.triggers().seen().map(this::seen).orElse(Truth.NO);
      any = any.or(seen);
      if (seen != Truth.NO) {
        String does =
            seen == Truth.YES
                ? "It does not stand any more: what is seen now ended it. "
                : "It may not stand any more: what is seen now may have ended it. ";
        gone.add(
            new DoesNotCount(
                CONFIRMATION,
                "The last check",
                does + policy.fill(lapse.says()),
                lapse.backing().sources()));
      }
    }
    return any;
  }

  /**
   * What nobody has looked at does not end a check. What somebody has looked at and left open may:
   * one of several, a stretch across a limit, or a reading that may be off.
   */
  private Truth seen(Condition condition) {
    Fits fits = new Fits(policy, new Closed(policy.vocabulary()).item(entered));
    Truth counted = condition.accept(fits);
    boolean told = condition.accept(fits.asRead()) != Truth.MAYBE;
    return counted == Truth.YES || told || looksAtWhatIsOpen(condition) ? counted : Truth.NO;
  }

  private boolean looksAtWhatIsOpen(Condition condition) {
    return Alternatives.of(policy, condition).stream()
        .flatMap(List::stream)
        .flatMap(atom -> entered.entry(atom.finding()).stream())
        .anyMatch(entry -> isOpen(entry.seen()));
  }

  private static boolean isOpen(Seen seen) {
    boolean stretch = !seen.from().equals(seen.to());
    return stretch || seen.options().size() + (seen.from().isPresent() ? 1 : 0) > 1;
  }
}
