package org.tidemark.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tidemark.model.Care;
import org.tidemark.model.Contact;
import org.tidemark.model.Departure;
import org.tidemark.model.Fallback;
import org.tidemark.model.Lapse;
import org.tidemark.model.Policy;
import org.tidemark.model.RecordList;
import org.tidemark.model.Term;
import org.tidemark.model.Tray;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/**
 * Collects what the layers say beside their rules. Lists only grow; steps are the highest layer's,
 * bans are everybody's.
 */
final class CareStack {
  private final Problems problems;
  private final Departures departures;
  private final Map<String, Lapse> lapses = new LinkedHashMap<>();
  private final Map<String, Fallback> fallbacks = new LinkedHashMap<>();
  private final Map<String, Contact> contacts = new LinkedHashMap<>();
  private final Map<String, Tray> trays = new LinkedHashMap<>();
  private final Map<String, RecordList> records = new LinkedHashMap<>();
  private final Map<String, String> calls = new LinkedHashMap<>();

  CareStack(Problems problems, Departures departures) {
    this.problems = problems;
    this.departures = departures;
  }

  void add(Policy layer) {
    Care care = layer.care();
    departures
        .names(layer.name(), Departure.Kind.LAPSE)
        .forEach(lapse -> leaveOut(layer.name(), lapse));
    care.lapses()
        .forEach(
            l -> isNew(l, lapses.putIfAbsent(l.name(), l), Lapse::place, "lapse `" + l.name()));
    care.trays()
        .forEach(t -> isNew(t, trays.putIfAbsent(t.name(), t), Tray::place, "tray `" + t.name()));
    care.fallbacks().forEach(f -> fallbacks.merge(f.name(), f, this::onTop));
    care.contacts().forEach(c -> contacts.put(c.name(), c));
    care.records().forEach(r -> records.merge(r.name(), r, CareStack::longer));
    calls.putAll(care.calls());
  }

  private void leaveOut(String layer, String lapse) {
    Lapse below = lapses.remove(lapse);
    if (below != null) {
      departures.leftOut(layer, Departure.Kind.LAPSE, lapse, below.place());
    }
  }

  /** What is seen when a term does not hold would be seen less often if the term were wider. */
  void termIsWidened(String layer, Term term, Term below) {
    if (term.alternatives().equals(below.alternatives())) {
      return;
    }
    for (Lapse lapse : lapses.values()) {
      if (lapse
          .triggers()
          .seen()
          .filter(s -> QuestionStack.uses(s, term.name(), false))
          .isPresent()) {
        departures.looser(
            layer,
            Departure.Kind.TERM,
            term.name(),
            Optional.of(below.place()),
            Diagnostic.error(
                    DiagnosticCode.LOOSER_THAN_FLOOR,
                    term.place().span(),
                    "widening the term `"
                        + term.name()
                        + "` would loosen the lapse `"
                        + lapse.name()
                        + "`")
                .and(lapse.place().span(), "the lapse uses it here")
                .help("give the wider term another name" + Departures.OR_DECLARE));
      }
    }
  }

  private <T> void isNew(
      T above, @org.jspecify.annotations.Nullable T below, Function<T, Place> place, String what) {
    if (below != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.ALREADY_DEFINED,
                  place.apply(above).span(),
                  "the " + what + "` is already defined by a layer below")
              .and(place.apply(below).span(), "it is defined here")
              .help("give yours another name"));
    }
  }

  private Fallback onTop(Fallback below, Fallback above) {
    Set<String> never = new LinkedHashSet<>();
    below.barredSteps().forEach(b -> never.add(b.name()));
    above.steps().stream()
        .flatMap(s -> s.alternatives().stream())
        .filter(a -> never.contains(a.name()))
        .forEach(a -> barredBelow(a.name(), above, below));
    if (!Narrowing.within(below.after(), above.after())) {
      departures.looser(
          above.layer(),
          Departure.Kind.STEPS,
          above.name(),
          Optional.of(below.place()),
          Diagnostic.error(
                  DiagnosticCode.LOOSER_THAN_FLOOR,
                  above.place().span(),
                  "`" + above.name() + "` begins after fewer findings than in the layer below")
              .and(below.place().span(), "the layer below has it here")
              .help("repeat `after` of the layer below" + Departures.OR_DECLARE));
    }
    Set<String> taken = new LinkedHashSet<>();
    above.steps().forEach(s -> s.alternatives().forEach(a -> taken.add(a.name())));
    List<Fallback.BarredStep> bans = new ArrayList<>(below.barredSteps());
    bans.removeIf(b -> taken.contains(b.name()));
    above.barredSteps().stream().filter(b -> !never.contains(b.name())).forEach(bans::add);
    return new Fallback(
        above.name(),
        above.layer(),
        above.after(),
        above.inOrder(),
        above.steps().isEmpty() ? below.steps() : above.steps(),
        bans,
        above.then().isEmpty() ? below.then() : above.then(),
        above.contact().or(below::contact),
        above.backing(),
        above.place());
  }

  private void barredBelow(String step, Fallback above, Fallback below) {
    departures.looser(
        above.layer(),
        Departure.Kind.STEPS,
        above.name(),
        Optional.of(below.place()),
        Diagnostic.error(
                DiagnosticCode.LOOSER_THAN_FLOOR,
                above.place().span(),
                "the step `" + step + "` is barred by the layer below")
            .and(below.place().span(), "the layer below bars it here")
            .help("delete the step" + Departures.OR_DECLARE));
  }

  private static RecordList longer(RecordList below, RecordList above) {
    Set<String> fields = new LinkedHashSet<>(below.fields());
    fields.addAll(above.fields());
    Set<String> asked = new LinkedHashSet<>(below.whenAsked());
    asked.addAll(above.whenAsked());
    return new RecordList(
        above.name(), List.copyOf(fields), List.copyOf(asked), above.backing(), above.place());
  }

  Map<String, String> calls() {
    return calls;
  }

  Care whole() {
    return new Care(
        List.copyOf(lapses.values()),
        List.copyOf(fallbacks.values()),
        List.copyOf(contacts.values()),
        List.copyOf(trays.values()),
        List.copyOf(records.values()),
        calls);
  }
}
