package org.tidemark.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.model.Value;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.ReferenceEvaluator;
import org.tidemark.testkit.ReferenceReasons;
import org.tidemark.testkit.SomeFindings;

/**
 * The search against plain enumeration, on generated policies: outcomes, kinds, certain rules, and
 * what is still worth asking.
 */
class DeciderAgainstReferenceTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final int POLICIES = 40;
  private static final int FINDINGS_A_POLICY = 12;

  @ParameterizedTest
  @ValueSource(longs = {1, 1_000, 2_000, 3_000})
  void everythingAgreesWithEnumeration(long firstSeed) {
    int compared = 0;
    Set<Kind> seen = EnumSet.noneOf(Kind.class);
    for (long seed = firstSeed; seed < firstSeed + POLICIES; seed++) {
      EffectivePolicy policy = GeneratedPolicies.policy(seed, 5, 7);
      Enumerated all = new Enumerated(policy);
      Decider decider = Decider.of(policy, "use").orElseThrow();
      Random random = new Random(seed);
      for (int i = 0; i < FINDINGS_A_POLICY; i++) {
        Findings findings = SomeFindings.of(policy, random);
        List<Map<String, Value>> left = all.consistentWith(findings);
        if (!left.isEmpty()) {
          seen.add(
              compare(
                  decider.decide(findings, TODAY), all, left, "seed " + seed + ", " + findings));
          compared++;
        }
      }
    }
    assertTrue(compared > POLICIES * FINDINGS_A_POLICY / 2, "only " + compared + " comparisons");
    assertEquals(
        EnumSet.complementOf(EnumSet.of(Kind.UNDECIDED)), seen, "every kind of answer occurs");
  }

  /** Where everything is known the answer comes without a search; it must be the same answer. */
  @ParameterizedTest
  @ValueSource(longs = {1, 3_000})
  void everyFullyKnownCaseAgreesWithEnumeration(long firstSeed) {
    int compared = 0;
    for (long seed = firstSeed; seed < firstSeed + POLICIES; seed++) {
      EffectivePolicy policy = GeneratedPolicies.policy(seed, 4, 9);
      Enumerated all = new Enumerated(policy);
      Decider decider = Decider.of(policy, "use").orElseThrow();
      for (Map<String, Value> each : all.cases) {
        Decision decision = decider.decide(findings(each), TODAY);
        assertTrue(decision.settled(), "seed " + seed + ", " + each);
        compare(decision, all, List.of(each), "seed " + seed + ", " + each);
        compared++;
      }
    }
    assertTrue(compared > 100 * POLICIES, "only " + compared + " cases");
  }

  private static Findings findings(Map<String, Value> known) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    known.forEach((name, value) -> entries.put(name, new Findings.Entry(seen(value), NOWHERE)));
    return new Findings(entries);
  }

  private static Seen seen(Value value) {
    return value instanceof Value.Amount amount
        ? Seen.number(amount.number())
        : Seen.option(((Value.Word) value).name());
  }

  private static Kind compare(
      Decision decision, Enumerated all, List<Map<String, Value>> left, String what) {
    Set<Outcome> outcomes = all.outcomes(left);
    assertEquals(outcomes, decision.possible(), what);
    Outcome expected = outcomes.size() == 1 ? outcomes.iterator().next() : Outcome.HOLD;
    assertEquals(expected, decision.outcome(), what);
    Set<String> fired = new TreeSet<>();
    decision.reasons().forEach(r -> fired.add(r.rule()));
    assertEquals(all.certainlyFired(left), fired, what);
    Set<String> asked = new TreeSet<>();
    decision.ask().forEach(n -> asked.add(n.finding()));
    assertEquals(outcomes.size() > 1 ? all.relevant(left) : Set.of(), asked, what);
    return decision.kind();
  }

  /** Every case of a policy, with its outcome and the rules that fire in it. */
  private static final class Enumerated {
    private final EffectivePolicy policy;
    private final List<Map<String, Value>> cases;
    private final Map<Map<String, Value>, Outcome> outcomes = new HashMap<>();
    private final Map<Map<String, Value>, Set<String>> fired = new HashMap<>();

    Enumerated(EffectivePolicy policy) {
      this.policy = policy;
      this.cases = ReferenceEvaluator.everyCase(policy);
      EffectiveQuestion use = policy.question("use").orElseThrow();
      for (Map<String, Value> each : cases) {
        outcomes.put(each, ReferenceEvaluator.outcome(policy, use, each));
        fired.put(each, ReferenceEvaluator.fired(policy, use, each));
      }
    }

    List<Map<String, Value>> consistentWith(Findings findings) {
      return cases.stream().filter(c -> ReferenceReasons.fits(findings, c)).toList();
    }

    Set<Outcome> outcomes(List<Map<String, Value>> left) {
      Set<Outcome> all = EnumSet.noneOf(Outcome.class);
      left.forEach(c -> all.add(outcomes.get(c)));
      return all;
    }

    Set<String> certainlyFired(List<Map<String, Value>> left) {
      Set<String> certain = new TreeSet<>(fired.get(left.get(0)));
      left.forEach(c -> certain.retainAll(fired.get(c)));
      return certain;
    }

    /**
     * The findings such that two cases differ in no other, nor in what does not hang on it, and
     * come to different outcomes.
     */
    Set<String> relevant(List<Map<String, Value>> left) {
      CompiledQuestion compiled = CompiledQuestion.of(policy, policy.question("use").orElseThrow());
      Set<String> relevant = new TreeSet<>();
      for (int i = 0; i < compiled.space().size(); i++) {
        String name = compiled.space().cells(i).finding().name();
        Set<String> block = new HashSet<>();
        Arrays.stream(compiled.space().block(i))
            .forEach(b -> block.add(compiled.space().cells(b).finding().name()));
        if (varies(left, name) && changes(left, block)) {
          relevant.add(name);
        }
      }
      return relevant;
    }

    private static boolean varies(List<Map<String, Value>> left, String name) {
      Set<Object> values = new HashSet<>();
      left.forEach(c -> values.add(c.containsKey(name) ? c.get(name) : "not applicable"));
      return values.size() > 1;
    }

    private boolean changes(List<Map<String, Value>> left, Set<String> block) {
      Map<Map<String, Value>, Set<Outcome>> byRest = new HashMap<>();
      for (Map<String, Value> each : left) {
        Map<String, Value> rest = new HashMap<>(each);
        rest.keySet().removeAll(block);
        byRest.computeIfAbsent(rest, r -> EnumSet.noneOf(Outcome.class)).add(outcomes.get(each));
      }
      return byRest.values().stream().anyMatch(o -> o.size() > 1);
    }
  }
}
