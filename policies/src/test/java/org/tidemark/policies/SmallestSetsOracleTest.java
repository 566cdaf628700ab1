package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Grounds;
import org.tidemark.decide.Least;
import org.tidemark.decide.Observation;
import org.tidemark.decide.Routes;
import org.tidemark.decide.ToAsk;
import org.tidemark.decide.Way;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.testkit.FoundAnew;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.SomeFindings;
import org.tidemark.testkit.oracle.SmallestSetsOracle;
import org.tidemark.trial.WorkedCase;

/**
 * The smallest sets of findings against Z3 4.14 (through z3-turnkey), on policies far too large to
 * enumerate: what was found does what is said of it, and nothing smaller does. Of what would change
 * an answer, sets below {@link #TRIED} findings are tried, each with every value.
 */
class SmallestSetsOracleTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final int TRIED = 2;

  private final Map<String, Integer> seen = new TreeMap<>();

  private void note(String what) {
    seen.merge(what, 1, Integer::sum);
  }

  private final class Compared {
    private final SmallestSetsOracle oracle;
    private final Decider decider;
    private final FoundAnew anew;
    private final Findings entered;
    private final String what;

    Compared(
        EffectivePolicy policy,
        Decider decider,
        SmallestSetsOracle oracle,
        Findings entered,
        String what) {
      this.oracle = oracle;
      this.decider = decider;
      this.anew = new FoundAnew(policy.vocabulary());
      this.entered = entered;
      this.what = what;
    }

    void everything() {
      Set<Outcome> possible = oracle.possible(entered);
      Decision decision = decider.decide(entered, TODAY);
      assertEquals(possible, decision.possible(), what);
      if (possible.isEmpty()) {
        return;
      }
      Grounds grounds = decider.grounds(entered, decision, TODAY);
      grounds.forcedBy().ifPresent(l -> forced(l, possible.iterator().next()));
      grounds.wouldProceed().ifPresent(this::changed);
      if (possible.size() > 1) {
        routes(decider.routes(entered, TODAY));
      }
    }

    private void forced(Least least, Outcome outcome) {
      if (least instanceof Least.Found found) {
        assertTrue(oracle.leavesOnly(with(Findings.NONE, found), outcome), what + found);
        int size = found.findings().size();
        assertFalse(oracle.smallerForces(entered, outcome, size), what + found);
        assertTrue(oracle.smallerForces(entered, outcome, size + 1), what + found);
      }
      note("forced: " + least.getClass().getSimpleName());
    }

    private void changed(Least least) {
      if (least instanceof Least.Found found) {
        Findings after = with(anew.stillKnown(entered, names(found)), found);
        assertTrue(oracle.leavesOnly(after, Outcome.PROCEED), what + found);
      }
      none("change", least, Outcome.PROCEED, true);
    }

    private void routes(Routes routes) {
      for (Way way : routes.ways()) {
        if (way.fewest() instanceof Least.Found found) {
          assertTrue(oracle.leavesOnly(with(entered, found), way.outcome()), what + way);
        }
        none("way", way.fewest(), way.outcome(), false);
      }
      if (routes.fewest() instanceof ToAsk.Found found) {
        assertTrue(oracle.settles(entered, names(found)), what + found);
        assertFalse(oracle.fewerSettle(entered, found.needs().size()), what + found);
        assertTrue(oracle.fewerSettle(entered, found.needs().size() + 1), what + found);
      } else if (routes.fewest() instanceof ToAsk.NoneExists) {
        assertFalse(oracle.fewerSettle(entered, Integer.MAX_VALUE), what);
      }
      note("ask: " + routes.fewest().getClass().getSimpleName());
    }

    /** Nothing smaller does; where none is said to exist, the small ones at least do not. */
    private void none(String kind, Least least, Outcome outcome, boolean renewed) {
      int size = least instanceof Least.Found found ? found.findings().size() : TRIED;
      if (!(least instanceof Least.NotWorkedOut) && size <= TRIED) {
        assertFalse(oracle.fewerBring(entered, outcome, size, renewed), what + kind + least);
        boolean some = least instanceof Least.Found && size < TRIED;
        assertTrue(!some || oracle.fewerBring(entered, outcome, size + 1, renewed), what + least);
        note(kind + ", none smaller");
      }
      note(kind + ": " + least.getClass().getSimpleName());
    }
  }

  private static Set<String> names(ToAsk.Found found) {
    Set<String> names = new LinkedHashSet<>();
    found.needs().forEach(n -> names.add(n.finding()));
    return names;
  }

  private static Set<String> names(Least.Found found) {
    Set<String> names = new LinkedHashSet<>();
    found.findings().forEach(f -> names.add(f.finding()));
    return names;
  }

  private static Findings with(Findings before, Least.Found found) {
    Findings after = before;
    for (Observation each : found.findings()) {
      after = after.with(each.finding(), new Findings.Entry(each.seen(), FoundAnew.NOWHERE));
    }
    return after;
  }

  @Test
  void theHospitalsCases() {
    for (String question : List.of("use", "pass", "feed")) {
      EffectivePolicy policy = Shipped.policy(Shipped.HOSPITAL);
      Decider decider = Decider.of(policy, question).orElseThrow();
      try (SmallestSetsOracle oracle = new SmallestSetsOracle(policy, question)) {
        stated(question)
            .forEach((name, f) -> new Compared(policy, decider, oracle, f, name).everything());
        for (long seed = 0; seed < 5; seed++) {
          Findings all = known(policy, seed);
          new Compared(policy, decider, oracle, all, question + " " + seed).everything();
        }
      }
    }
    assertTrue(seen.getOrDefault("change: Found", 0) > 3, seen::toString);
    assertTrue(seen.getOrDefault("forced: Found", 0) > 10, seen::toString);
    assertTrue(seen.getOrDefault("way, none smaller", 0) > 5, seen::toString);
    assertTrue(seen.getOrDefault("ask: Found", 0) > 5, seen::toString);
  }

  /** Some of what the worked cases state, with all else open. */
  private static Map<String, Findings> stated(String question) {
    Map<String, Findings> stated = new TreeMap<>();
    int number = 0;
    for (WorkedCase worked : Shipped.cases(Shipped.HOSPITAL).cases()) {
      if (worked.question().equals(question) && number++ % 15 == 0) {
        stated.put(worked.name(), worked.findings());
      }
    }
    return stated;
  }

  /** A case in which everything is known, of somebody whom the policy is for. */
  private static Findings known(EffectivePolicy policy, long seed) {
    Findings who =
        Findings.NONE
            .with("population", new Findings.Entry(Seen.option("adult"), FoundAnew.NOWHERE))
            .with("place", new Findings.Entry(Seen.option("ward"), FoundAnew.NOWHERE));
    return KnownCases.findings(
        new KnownCases(policy.vocabulary(), Shipped.words().usual(), seed, 9).draw(who));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void generatedPoliciesTooLargeToEnumerate(boolean readings) {
    for (long seed = 500; seed < 515; seed++) {
      EffectivePolicy policy =
          readings
              ? GeneratedPolicies.ofReadings(seed, 9, 14)
              : GeneratedPolicies.policy(seed, 9, 14);
      Decider decider = Decider.of(policy, "use").orElseThrow();
      Random random = new Random(seed);
      try (SmallestSetsOracle oracle = new SmallestSetsOracle(policy, "use")) {
        for (int i = 0; i < 3; i++) {
          Findings entered = SomeFindings.of(policy, random);
          String what = "seed " + seed + ", " + entered + ": ";
          new Compared(policy, decider, oracle, entered, what).everything();
        }
      }
    }
    assertTrue(seen.getOrDefault("way, none smaller", 0) > 20, seen::toString);
    assertEquals(readings, seen.getOrDefault("ask: NoneExists", 0) > 5, seen::toString);
    assertEquals(readings, seen.getOrDefault("way: NoneExists", 0) > 2, seen::toString);
    assertFalse(seen.toString().contains("NotWorkedOut"), seen::toString);
  }
}
