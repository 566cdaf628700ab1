package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidemark.count.Deriving;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * What X-ray readings come to, against a slow and obvious reference: write every unknown field in
 * every way, work each whole record out, and take the set. Ours is never smaller, and the same
 * where all is known.
 */
class FilmsAgainstReferenceTest {
  private static final EffectivePolicy POLICY = Shipped.policy(Shipped.HOSPITAL);
  private static final Place HERE = Place.at(new Span(SourceText.of("record", " "), 0, 1));
  private static final List<String> ORDER =
      List.of("none", "not-enough", "stomach", "gullet", "airway", "chest", "skull");
  private static final List<String> GOOD =
      List.of(
          "newest-film",
          "this-patient",
          "follows-gullet",
          "divides-fork",
          "crosses-in-middle",
          "ends-below-left",
          "written",
          "instruction");
  private static final Map<String, List<String>> FIELDS = fields();

  private static Map<String, List<String>> fields() {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    fields.put("at", List.of("10", "12"));
    fields.put("read-at", List.of("13", "14"));
    fields.put("passing", List.of("this-one", "this-one", "this-one", "earlier"));
    fields.put("check", List.of("this-one", "this-one", "this-one", "earlier"));
    fields.put("reader", List.of("radiologist", "doctor", "nurse"));
    fields.put("reader-signed-off", List.of("yes", "no"));
    fields.put("screen", List.of("diagnostic", "diagnostic", "diagnostic", "other"));
    fields.put("result", List.of("stomach", "stomach", "airway", "gullet", "cannot-tell"));
    fields.put("report", List.of("first", "amended"));
    GOOD.forEach(
        f ->
            fields.put(
                f,
                List.of(
                    "yes", "yes", "yes", "yes", "yes", "yes", "yes", "yes", "yes", "yes", "no")));
    return fields;
  }

  @Test
  void neverSmallerAndTheSameWhereAllIsKnown() {
    Random chance = new Random(20260901);
    int wider = 0;
    int stomach = 0;
    for (int i = 0; i < 4_000; i++) {
      List<Map<String, String>> readings = readings(chance);
      int unknown = chance.nextInt(4);
      for (int u = 0; u < unknown; u++) {
        Map<String, String> one = readings.get(chance.nextInt(readings.size()));
        List<String> known = new ArrayList<>(one.keySet());
        one.remove(known.get(chance.nextInt(known.size())));
      }
      Set<String> reference = new TreeSet<>();
      complete(readings, reference);
      Set<String> ours = ours(readings);
      assertTrue(ours.containsAll(reference), () -> readings + ": " + ours + " not " + reference);
      if (unknown == 0) {
        assertEquals(reference, ours, readings::toString);
        stomach += reference.equals(Set.of("stomach")) ? 1 : 0;
      }
      wider += ours.equals(reference) ? 0 : 1;
    }
    assertTrue(stomach > 50, "too few count: " + stomach);
    assertTrue(wider < 400, "wider than it must be in " + wider);
  }

  private static List<Map<String, String>> readings(Random chance) {
    List<Map<String, String>> all = new ArrayList<>();
    int many = 1 + chance.nextInt(3);
    for (int i = 0; i < many; i++) {
      Map<String, String> one = new LinkedHashMap<>();
      FIELDS.forEach((f, may) -> one.put(f, may.get(chance.nextInt(may.size()))));
      all.add(one);
    }
    return all;
  }

  private static void complete(List<Map<String, String>> readings, Set<String> found) {
    for (Map<String, String> one : readings) {
      for (Map.Entry<String, List<String>> field : FIELDS.entrySet()) {
        if (!one.containsKey(field.getKey())) {
          for (String value : field.getValue()) {
            one.put(field.getKey(), value);
            complete(readings, found);
          }
          one.remove(field.getKey());
          return;
        }
      }
    }
    found.add(film(readings));
  }

  /** The sentence of the finding, word for word, on a record of which all is known. */
  private static String film(List<Map<String, String>> readings) {
    String worst = "none";
    for (Map<String, String> one : readings) {
      boolean here =
          is(one, "passing", "this-one")
              && is(one, "check", "this-one")
              && is(one, "this-patient", "yes");
      boolean replaced = readings.stream().anyMatch(other -> other != one && replaces(other, one));
      if (here && !replaced) {
        String says = says(one);
        worst = ORDER.indexOf(says) > ORDER.indexOf(worst) ? says : worst;
      }
    }
    return worst;
  }

  private static boolean replaces(Map<String, String> amended, Map<String, String> first) {
    return is(amended, "report", "amended")
        && of(amended, "at").equals(of(first, "at"))
        && of(amended, "reader").equals(of(first, "reader"))
        && (is(first, "report", "first")
            || of(amended, "read-at").compareTo(of(first, "read-at")) > 0);
  }

  private static String says(Map<String, String> one) {
    String result = of(one, "result");
    if (!result.equals("stomach")) {
      return result.equals("cannot-tell") ? "not-enough" : result;
    }
    boolean reader =
        is(one, "reader", "radiologist")
            || (is(one, "reader", "doctor") && is(one, "reader-signed-off", "yes"));
    boolean all = GOOD.stream().allMatch(f -> is(one, f, "yes"));
    return reader && all && is(one, "screen", "diagnostic") ? "stomach" : "not-enough";
  }

  private static Set<String> ours(List<Map<String, String>> readings) {
    List<TubeRecord.Item> items = readings.stream().map(FilmsAgainstReferenceTest::item).toList();
    TubeRecord record = new TubeRecord(Optional.empty(), Map.of("film-readings", items), List.of());
    return Shipped.sound(Deriving.of(POLICY).derive(Findings.NONE, record))
        .findings()
        .entry("film")
        .orElseThrow()
        .seen()
        .options();
  }

  private static TubeRecord.Item item(Map<String, String> one) {
    Findings fields = Findings.NONE;
    Map<String, LocalDateTime> times = new LinkedHashMap<>();
    for (Map.Entry<String, String> field : one.entrySet()) {
      if (field.getKey().endsWith("at")) {
        int hour = new BigDecimal(field.getValue()).intValueExact();
        times.put(field.getKey(), LocalDateTime.of(2026, 9, 1, hour, 0));
      } else {
        Seen seen = Seen.option(field.getValue());
        fields = fields.with(field.getKey(), new Findings.Entry(seen, HERE));
      }
    }
    Optional<LocalDateTime> at = Optional.ofNullable(times.remove("at"));
    return new TubeRecord.Item(at, times, fields, HERE);
  }

  private static boolean is(Map<String, String> one, String field, String value) {
    return of(one, field).equals(value);
  }

  private static String of(Map<String, String> one, String field) {
    return Objects.requireNonNull(one.get(field), field);
  }
}
