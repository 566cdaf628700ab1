package org.tidemark.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Value;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.ReferenceEvaluator;
import org.tidemark.testkit.ReferenceReadings;
import org.tidemark.testkit.SomeFindings;

/**
 * Readings that may be off against plain enumeration, on generated policies: the answer, the rules
 * that surely fire, and every smallest set, which must hold for all that its readings count as.
 */
class ReadingsAgainstReferenceTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final int POLICIES = 40;
  private static final int FINDINGS_A_POLICY = 8;

  private final Map<String, Integer> seen = new TreeMap<>();

  @ParameterizedTest
  @ValueSource(longs = {1, 1_000, 2_000})
  void everyReadingCountsAsAllThatItMayBe(long firstSeed) {
    for (long seed = firstSeed; seed < firstSeed + POLICIES; seed++) {
      EffectivePolicy policy = GeneratedPolicies.ofReadings(seed, 4, 8);
      OnePolicy one = new OnePolicy(policy);
      Random random = new Random(seed);
      for (int i = 0; i < FINDINGS_A_POLICY; i++) {
        Findings entered = SomeFindings.of(policy, random);
        if (!one.reference.possible(entered).isEmpty()) {
          one.compare(entered, "seed " + seed + ", " + entered);
        }
      }
    }
    assertEquals(
        Set.of(
            "ask: found",
            "ask: none",
            "change: none",
            "change: read",
            "counts as more",
            "forced",
            "way: none",
            "way: read"),
        seen.keySet());
    assertTrue(seen.values().stream().allMatch(n -> n > 3), seen::toString);
  }

  private void note(String what) {
    seen.merge(what, 1, Integer::sum);
  }

  private final class OnePolicy {
    private final EffectivePolicy policy;
    private final ReferenceReadings reference;
    private final Decider decider;

    OnePolicy(EffectivePolicy policy) {
      this.policy = policy;
      this.reference = new ReferenceReadings(policy);
      this.decider = Decider.of(policy, "use").orElseThrow();
    }

    void compare(Findings entered, String what) {
      Set<Outcome> possible = reference.possible(entered);
      decided(entered, possible, what);
      if (possible.size() == 1) {
        forced(entered, possible.iterator().next(), what);
      } else {
        ways(entered, possible, what);
      }
      if (possible.size() > 1 || possible.contains(Outcome.HOLD)) {
        changed(entered, what);
      } else {
        assertEquals(new Least.NoneExists(), decider.change(entered), what);
      }
    }

    private void decided(Findings entered, Set<Outcome> possible, String what) {
      Decision decision = decider.decide(entered, TODAY);
      assertEquals(possible, decision.possible(), what);
      assertEquals(
          possible.size() == 1 ? possible.iterator().next() : Outcome.HOLD,
          decision.outcome(),
          what);
      Set<String> fired = new TreeSet<>();
      decision.reasons().forEach(r -> fired.add(r.rule()));
      assertEquals(certain(entered), fired, what);
      Decision exactly =
          Decider.ofWhatIsSo(policy, "use").orElseThrow().decide(reference.counted(entered), TODAY);
      assertEquals(exactly.possible(), decision.possible(), what);
      assertEquals(exactly.ask(), decision.ask(), what);
      if (!decision.countsAs().isEmpty()) {
        note("counts as more");
      }
    }

    private Set<String> certain(Findings entered) {
      Set<String> certain = new TreeSet<>();
      boolean first = true;
      for (Map<String, Value> each : reference.left(entered)) {
        Set<String> fired =
            ReferenceEvaluator.fired(policy, policy.question("use").orElseThrow(), each);
        if (first) {
          certain.addAll(fired);
        }
        first = false;
        certain.retainAll(fired);
      }
      return certain;
    }

    private void forced(Findings entered, Outcome outcome, String what) {
      Least.Found found = assertInstanceOf(Least.Found.class, decider.forcing(entered), what);
      assertEquals(reference.forcing(entered, outcome), Optional.of(names(found)), what);
      found
          .findings()
          .forEach(f -> assertEquals(entered.entry(f.finding()).orElseThrow().seen(), f.seen()));
      assertEquals(EnumSet.of(outcome), reference.possible(with(Findings.NONE, found)), what);
      assertEquals(Routes.SETTLED, decider.routes(entered), what);
      note("forced");
    }

    private void ways(Findings entered, Set<Outcome> possible, String what) {
      assertInstanceOf(Least.NoneExists.class, decider.forcing(entered), what);
      Routes routes = decider.routes(entered);
      Optional<List<String>> asking = reference.asking(entered);
      if (asking.isEmpty()) {
        assertEquals(new ToAsk.NoneExists(), routes.fewest(), what);
        note("ask: none");
      } else {
        ToAsk.Found found = assertInstanceOf(ToAsk.Found.class, routes.fewest(), what + asking);
        assertEquals(asking.get(), found.needs().stream().map(Need::finding).toList(), what);
        note("ask: found");
      }
      List<Outcome> outcomes = new ArrayList<>();
      for (Way way : routes.ways()) {
        outcomes.add(way.outcome());
        Optional<Set<String>> smallest = reference.settling(entered, way.outcome());
        if (smallest.isEmpty()) {
          assertEquals(new Least.NoneExists(), way.fewest(), what + way);
          note("way: none");
        } else {
          Least.Found found = assertInstanceOf(Least.Found.class, way.fewest(), what + way);
          assertEquals(smallest.get(), names(found), what + way);
          assertEquals(EnumSet.of(way.outcome()), reference.possible(with(entered, found)), what);
          noteIfRead("way: ", found);
        }
      }
      assertEquals(List.copyOf(possible), outcomes, what);
    }

    private void changed(Findings entered, String what) {
      Least least = decider.change(entered);
      Optional<Set<String>> smallest = reference.change(entered);
      if (smallest.isEmpty()) {
        assertEquals(new Least.NoneExists(), least, what);
        note("change: none");
        return;
      }
      Least.Found found = assertInstanceOf(Least.Found.class, least, what + smallest);
      assertEquals(smallest.get(), names(found), what + found);
      Findings after = with(reference.after(entered, names(found)), found);
      assertEquals(EnumSet.of(Outcome.PROCEED), reference.possible(after), what + found);
      noteIfRead("change: ", found);
    }

    private void noteIfRead(String what, Least.Found found) {
      Set<String> read = new HashSet<>(names(found));
      read.removeIf(f -> policy.howFarOff(f).isEmpty());
      if (!read.isEmpty()) {
        note(what + "read");
      }
    }
  }

  private static Set<String> names(Least.Found found) {
    Set<String> names = new TreeSet<>();
    found.findings().forEach(f -> names.add(f.finding()));
    return names;
  }

  private static Findings with(Findings before, Least.Found found) {
    Findings after = before;
    for (Observation each : found.findings()) {
      after = after.with(each.finding(), new Findings.Entry(each.seen(), NOWHERE));
    }
    return after;
  }
}
