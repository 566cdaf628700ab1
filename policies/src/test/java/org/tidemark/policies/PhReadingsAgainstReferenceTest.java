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
import java.util.stream.Collectors;
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
 * What pH readings come to, against a slow and obvious reference: write every unknown field in
 * every way, work each whole record out, and take the set. Ours is never smaller, and the same
 * where all is known.
 */
class PhReadingsAgainstReferenceTest {
  private static final EffectivePolicy POLICY = Shipped.policy(Shipped.HOSPITAL);
  private static final Place HERE = Place.at(new Span(SourceText.of("record", " "), 0, 1));
  private static final Set<String> NUMBERS =
      Set.of("ph", "read-after", "strip-step", "strip-highest", "minutes-since-feed");
  private static final Map<String, List<String>> FIELDS = fields();

  private static Map<String, List<String>> fields() {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    fields.put("at", List.of("10", "12", "14"));
    fields.put("check", List.of("this-one", "this-one", "this-one", "earlier"));
    fields.put("aspirate", List.of("obtained", "obtained", "obtained", "none"));
    fields.put("ph", List.of("2", "4.5", "6"));
    fields.put("strip", List.of("gastric", "gastric", "gastric", "litmus"));
    fields.put("strip-step", List.of("0.5", "0.5", "1"));
    fields.put("strip-highest", List.of("6", "6", "5"));
    fields.put("read-after", List.of("10", "60", "60", "61"));
    fields.put("drawn", List.of("before-first-check", "after-first-check"));
    fields.put("down-before", List.of("nothing", "nothing", "water"));
    fields.put("minutes-since-feed", List.of("30", "40", "29"));
    return fields;
  }

  /** What a whole record comes to: what came back, and the readings that may stand. */
  private record Standing(Set<String> aspirate, Set<BigDecimal> ph) {
    static Standing nothing() {
      return new Standing(new TreeSet<>(), new TreeSet<>());
    }

    void add(Standing other) {
      aspirate.addAll(other.aspirate());
      ph.addAll(other.ph());
    }
  }

  @Test
  void neverSmallerAndTheSameWhereAllIsKnown() {
    Random chance = new Random(20260902);
    int counted = 0;
    int doubtful = 0;
    for (int i = 0; i < 4_000; i++) {
      List<Map<String, String>> readings = readings(chance);
      int unknown = chance.nextInt(4);
      for (int u = 0; u < unknown; u++) {
        Map<String, String> one = readings.get(chance.nextInt(readings.size()));
        List<String> known = new ArrayList<>(one.keySet());
        one.remove(known.get(chance.nextInt(known.size())));
      }
      Standing reference = Standing.nothing();
      complete(readings, reference);
      Findings ours = ours(readings);
      Set<String> aspirate = ours.entry("aspirate").map(e -> e.seen().options()).orElse(EVERYTHING);
      assertTrue(
          aspirate.containsAll(reference.aspirate()),
          () -> readings + " " + aspirate + " not " + reference);
      assertTrue(
          ours.entry("ph").isEmpty() || aspirate.equals(Set.of("obtained")), readings::toString);
      ours.entry("ph").ifPresent(e -> assertHolds(e.seen(), reference.ph(), readings));
      if (unknown == 0) {
        assertEquals(reference.aspirate(), aspirate, readings::toString);
        ours.entry("ph").ifPresent(e -> assertEnds(e.seen(), reference.ph(), readings));
        counted += reference.ph().size() == 1 ? 1 : 0;
        doubtful += reference.ph().size() > 1 ? 1 : 0;
      }
    }
    assertTrue(counted > 50, "too few count: " + counted);
    assertTrue(doubtful > 5, "too few are doubtful: " + doubtful);
  }

  private static final Set<String> EVERYTHING =
      Set.of("not-attempted", "none", "obtained", "could-not-test");

  private static void assertHolds(
      Seen seen, Set<BigDecimal> all, List<Map<String, String>> readings) {
    all.forEach(
        n ->
            assertTrue(
                seen.from().orElseThrow().compareTo(n) <= 0
                    && seen.to().orElseThrow().compareTo(n) >= 0,
                () -> readings + ": " + seen.words() + " not " + all));
  }

  private static void assertEnds(Seen seen, Set<BigDecimal> all, List<Map<String, String>> from) {
    TreeSet<BigDecimal> sorted = new TreeSet<>(all);
    assertEquals(0, seen.from().orElseThrow().compareTo(sorted.first()), from::toString);
    assertEquals(0, seen.to().orElseThrow().compareTo(sorted.last()), from::toString);
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

  private static void complete(List<Map<String, String>> readings, Standing found) {
    for (Map<String, String> one : readings) {
      for (Map.Entry<String, List<String>> field : FIELDS.entrySet()) {
        if (!one.containsKey(field.getKey())) {
          for (String value : may(one, field.getKey(), field.getValue())) {
            one.put(field.getKey(), value);
            complete(readings, found);
          }
          one.remove(field.getKey());
          return;
        }
      }
    }
    found.add(whole(readings));
  }

  /** Whoever read a strip had fluid. */
  private static List<String> may(Map<String, String> one, String field, List<String> all) {
    return field.equals("aspirate") && one.containsKey("ph") ? List.of("obtained") : all;
  }

  /**
   * The sentences of the developers' document, word for word, on a record of which all is known.
   */
  private static Standing whole(List<Map<String, String>> readings) {
    List<Map<String, String>> here =
        readings.stream().filter(r -> is(r, "check", "this-one")).toList();
    List<Map<String, String>> counting =
        here.stream().filter(PhReadingsAgainstReferenceTest::counts).toList();
    Standing standing = Standing.nothing();
    if (counting.isEmpty()) {
      standing.aspirate().add("not-attempted");
      return standing;
    }
    String newest =
        counting.stream().map(r -> of(r, "at")).sorted().reduce((a, b) -> b).orElseThrow();
    for (Map<String, String> one : here) {
      if (of(one, "at").compareTo(newest) >= 0) {
        standing.aspirate().add(of(one, "aspirate"));
        if (is(one, "aspirate", "obtained")) {
          standing.ph().add(new BigDecimal(of(one, "ph")));
        }
      }
    }
    return standing;
  }

  private static boolean counts(Map<String, String> one) {
    boolean strip =
        is(one, "strip", "gastric")
            && of(one, "strip-step").equals("0.5")
            && is(one, "strip-highest", "6")
            && !is(one, "read-after", "61");
    boolean sample =
        is(one, "drawn", "before-first-check")
            ? is(one, "down-before", "nothing")
            : !is(one, "minutes-since-feed", "29");
    return is(one, "aspirate", "none") || (strip && sample);
  }

  private static Findings ours(List<Map<String, String>> readings) {
    List<TubeRecord.Item> items =
        readings.stream().map(PhReadingsAgainstReferenceTest::item).collect(Collectors.toList());
    TubeRecord record = new TubeRecord(Optional.empty(), Map.of("ph-readings", items), List.of());
    return Shipped.sound(Deriving.of(POLICY).derive(Findings.NONE, record)).findings();
  }

  private static TubeRecord.Item item(Map<String, String> one) {
    Findings fields = Findings.NONE;
    Optional<LocalDateTime> at = Optional.empty();
    boolean none = "none".equals(one.get("aspirate"));
    for (Map.Entry<String, String> field : one.entrySet()) {
      if (field.getKey().equals("at")) {
        at = Optional.of(LocalDateTime.of(2026, 9, 1, Integer.parseInt(field.getValue()), 0));
      } else if (!none || !field.getKey().equals("ph")) {
        Seen seen =
            NUMBERS.contains(field.getKey())
                ? Seen.number(new BigDecimal(field.getValue()))
                : Seen.option(field.getValue());
        fields = fields.with(field.getKey(), new Findings.Entry(seen, HERE));
      }
    }
    return new TubeRecord.Item(at, fields, HERE);
  }

  private static boolean is(Map<String, String> one, String field, String value) {
    return of(one, field).equals(value);
  }

  private static String of(Map<String, String> one, String field) {
    return Objects.requireNonNull(one.get(field), field);
  }
}
