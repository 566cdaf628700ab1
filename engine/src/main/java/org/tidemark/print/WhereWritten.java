package org.tidemark.print;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Care;
import org.tidemark.model.Policy;
import org.tidemark.model.Question;
import org.tidemark.source.Place;

/** Where a layer writes what it says, by the same words as {@link Written}. */
final class WhereWritten {
  private final Map<String, Item> items = new LinkedHashMap<>();

  private WhereWritten() {}

  /**
   * Something that a layer writes.
   *
   * @param kind what sort of thing it is
   * @param name its name in the file
   * @param place where it is written
   */
  record Item(String kind, String name, Place place) {}

  static Map<String, Item> in(Policy layer, EffectivePolicy whole) {
    WhereWritten where = new WhereWritten();
    where.numbers(layer);
    layer.questions().forEach(where::question);
    where.care(layer.care());
    where.calls(layer, whole);
    layer.declared().statements().forEach(s -> where.put("Statement", s.name(), s.place()));
    layer
        .declared()
        .departures()
        .forEach(d -> where.put("Departs in the " + d.kind().word(), d.name(), d.place()));
    return where.items;
  }

  private void put(String kind, String name, Place place) {
    items.put(Written.said(kind, name), new Item(kind, name, place));
  }

  private void numbers(Policy layer) {
    layer.values().forEach(v -> put("Number", v.name(), v.place()));
    layer.bands().forEach(b -> put("Band", b.name(), b.place()));
    layer.barred().forEach(b -> put("Does not count", b.finding(), layer.header().place()));
    layer.terms().forEach(t -> put("Term", t.name(), t.place()));
  }

  private void question(Question question) {
    put("Question", question.name(), question.place());
    question.rules().forEach(r -> put("Rule of " + question.name(), r.name(), r.place()));
  }

  private void care(Care care) {
    care.lapses().forEach(l -> put("A check lapses", l.name(), l.place()));
    care.fallbacks().forEach(f -> put("Steps", f.name(), f.place()));
    care.contacts().forEach(c -> put("Contact", c.name(), c.place()));
    care.trays().forEach(t -> put("Tray", t.name(), t.place()));
    care.records().forEach(r -> put("Write down", r.name(), r.place()));
  }

  /** A layer that says whom to call for a rule of a layer below speaks of that rule. */
  private void calls(Policy layer, EffectivePolicy whole) {
    for (var question : whole.questions()) {
      layer.care().calls().keySet().stream()
          .filter(rule -> question.rule(rule).isPresent())
          .forEach(rule -> put("Rule of " + question.name(), rule, layer.header().place()));
    }
  }
}
