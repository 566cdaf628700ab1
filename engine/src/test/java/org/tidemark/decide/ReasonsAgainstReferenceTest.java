package org.tidemark.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.ReferenceReasons;
import org.tidemark.testkit.SomeFindings;

/** The smallest sets against plain enumeration, on generated policies: sizes, and that they do. */
class ReasonsAgainstReferenceTest {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final int POLICIES = 40;
  private static final int FINDINGS_A_POLICY = 8;

  @ParameterizedTest
  @ValueSource(longs = {1, 1_000, 2_000, 3_000})
  void everySmallestSetIsOne(long firstSeed) {
    Set<String> seen = new TreeSet<>();
    int settled = 0;
    int open = 0;
    for (long seed = firstSeed; seed < firstSeed + POLICIES; seed++) {
      EffectivePolicy policy = GeneratedPolicies.policy(seed, 4, 8);
      ReferenceReasons reference = new ReferenceReasons(policy);
      Decider decider = Decider.of(policy, "use").orElseThrow();
      Random random = new Random(seed);
      for (int i = 0; i < FINDINGS_A_POLICY; i++) {
        Findings findings = SomeFindings.of(policy, random);
        Set<Outcome> possible = reference.possible(findings);
        String what = "seed " + seed + ", " + findings;
        if (possible.size() == 1) {
          forced(reference, decider, findings, possible.iterator().next(), what);
          settled++;
        } else if (possible.size() > 1) {
          ways(reference, decider, findings, possible, what);
          open++;
        }
        if (!possible.isEmpty()) {
          seen.add(changed(reference, decider, findings, possible, what));
        }
      }
    }
    assertTrue(settled > 40 && open > 40, settled + " settled and " + open + " open");
    assertEquals(Set.of("found 1", "found 2", "none", "not asked"), common(seen));
  }

  private static Set<String> common(Set<String> seen) {
    Set<String> common = new TreeSet<>(Set.of("found 1", "found 2", "none", "not asked"));
    common.retainAll(seen);
    return common;
  }

  private static void forced(
      ReferenceReasons reference, Decider decider, Findings findings, Outcome is, String what) {
    Least.Found found = assertInstanceOf(Least.Found.class, decider.forcing(findings), what);
    assertEquals(reference.forcing(findings, is).orElseThrow(), names(found), what);
    assertEquals(EnumSet.of(is), reference.possible(with(Findings.NONE, found)), what);
    assertEquals(Routes.SETTLED, decider.routes(findings), what);
  }

  private static void ways(
      ReferenceReasons reference,
      Decider decider,
      Findings findings,
      Set<Outcome> possible,
      String what) {
    assertInstanceOf(Least.NoneExists.class, decider.forcing(findings), what);
    List<Outcome> outcomes = new ArrayList<>();
    Routes routes = decider.routes(findings);
    assertEquals(
        reference.asking(findings),
        assertInstanceOf(ToAsk.Found.class, routes.fewest(), what).needs().stream()
            .map(Need::finding)
            .toList(),
        what);
    for (Way way : routes.ways()) {
      Least.Found found = assertInstanceOf(Least.Found.class, way.fewest(), what);
      assertEquals(
          reference.settling(findings, way.outcome()), Optional.of(names(found)), what + way);
      assertEquals(EnumSet.of(way.outcome()), reference.possible(with(findings, found)), what);
      outcomes.add(way.outcome());
    }
    assertEquals(List.copyOf(possible), outcomes, what);
  }

  private static String changed(
      ReferenceReasons reference,
      Decider decider,
      Findings findings,
      Set<Outcome> possible,
      String what) {
    Least least = decider.change(findings);
    boolean hold = possible.size() > 1 || possible.contains(Outcome.HOLD);
    if (!hold) {
      assertEquals(new Least.NoneExists(), least, what);
      return "not asked";
    }
    Optional<Set<String>> smallest = reference.change(findings);
    if (smallest.isEmpty()) {
      assertEquals(new Least.NoneExists(), least, what);
      return "none";
    }
    Least.Found found = assertInstanceOf(Least.Found.class, least, what);
    assertEquals(smallest.get(), names(found), what + found);
    Findings after = with(reference.stillKnown(findings, names(found)), found);
    assertEquals(EnumSet.of(Outcome.PROCEED), reference.possible(after), what + found);
    return "found " + found.findings().size();
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
