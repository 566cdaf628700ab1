package org.tidemark.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.model.Barred;
import org.tidemark.model.Care;
import org.tidemark.model.Departure;
import org.tidemark.model.Fallback;
import org.tidemark.model.Lapse;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Rule;
import org.tidemark.model.Term;

/**
 * A policy as it would be if what a layer above declares to be looser stood in it. Whatever else
 * that layer has, it must have as strictly.
 */
final class TakenOver {
  private final EffectivePolicy below;
  private final EffectivePolicy above;

  TakenOver(EffectivePolicy below, EffectivePolicy above) {
    this.below = below;
    this.above = above;
  }

  EffectivePolicy whole() {
    if (above.departed().stream().noneMatch(d -> d.departure().layer().equals(above.name()))) {
      return below;
    }
    return new EffectivePolicy(
        below.parts(),
        below.vocabulary(),
        values(),
        bands(),
        terms(),
        barred(),
        below.questions().stream().map(this::question).toList(),
        care(),
        below.notStated(),
        below.departed());
  }

  private Set<String> names(Departure.Kind kind) {
    return above.departedHere(kind).stream()
        .map(d -> d.departure().name())
        .collect(Collectors.toSet());
  }

  /** A way to proceed that the layer above adds may look at values, bands and terms of its own. */
  private Map<String, List<EffectivePolicy.Say>> values() {
    Set<String> looser = names(Departure.Kind.VALUE);
    Map<String, List<EffectivePolicy.Say>> all = new LinkedHashMap<>();
    above.values().forEach(v -> all.put(v.name(), above.says(v.name())));
    below.values().stream()
        .filter(v -> !looser.contains(v.name()))
        .forEach(v -> all.put(v.name(), below.says(v.name())));
    return all;
  }

  private List<NamedBand> bands() {
    List<NamedBand> all = new ArrayList<>(below.bands());
    above.bands().stream().filter(b -> below.band(b.name()).isEmpty()).forEach(all::add);
    return all;
  }

  private List<Term> terms() {
    Set<String> changed = names(Departure.Kind.TERM);
    return above.terms().stream()
        .map(t -> changed.contains(t.name()) ? t : below.term(t.name()).orElse(t))
        .toList();
  }

  private List<Barred> barred() {
    Set<String> accepted = names(Departure.Kind.TEST);
    return below.barred().stream().filter(b -> !accepted.contains(b.finding())).toList();
  }

  private EffectiveQuestion question(EffectiveQuestion asked) {
    Set<String> departing = names(Departure.Kind.RULE);
    List<Rule> rules =
        new ArrayList<>(asked.rules().stream().filter(r -> !departing.contains(r.name())).toList());
    above.question(asked.name()).stream()
        .flatMap(q -> q.rules().stream())
        .filter(r -> departing.contains(r.name()))
        .forEach(rules::add);
    return new EffectiveQuestion(
        asked.name(), asked.asks(), asked.words(), asked.speaksOf(), asked.open(), rules);
  }

  private Care care() {
    Care care = below.care();
    Set<String> lapses = names(Departure.Kind.LAPSE);
    Set<String> steps = names(Departure.Kind.STEPS);
    List<Lapse> kept = care.lapses().stream().filter(l -> !lapses.contains(l.name())).toList();
    List<Fallback> fallbacks = new ArrayList<>(care.fallbacks());
    fallbacks.replaceAll(f -> steps.contains(f.name()) ? fallback(f) : f);
    return new Care(kept, fallbacks, care.contacts(), care.trays(), care.records(), care.calls());
  }

  private Fallback fallback(Fallback other) {
    return above.care().fallbacks().stream()
        .filter(f -> f.name().equals(other.name()))
        .findFirst()
        .orElse(other);
  }
}
