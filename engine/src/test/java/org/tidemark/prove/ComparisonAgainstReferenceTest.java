package org.tidemark.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Outcome;
import org.tidemark.model.Value;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.ReferenceEvaluator;

/** The comparison of two policies against plain enumeration of every case. */
class ComparisonAgainstReferenceTest {
  private static final int POLICIES = 80;

  @Test
  void everyChangeIsFoundAndNoOther() {
    int changed = 0;
    int equal = 0;
    for (long seed = 400; seed < 400 + POLICIES; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoAlike(seed, 4, 7);
      Comparison comparison = Comparison.of(two.get(0), two.get(1), Prover.BUDGET);
      Set<String> found = new TreeSet<>();
      comparison.changes().forEach(c -> found.add(c.rule() + " " + c.from() + " " + c.to()));
      Set<String> expected = enumerated(two.get(0), two.get(1));
      assertEquals(expected, found, "seed " + seed);
      assertTrue(comparison.settled());
      comparison
          .changes()
          .forEach(c -> assertTrue(c.example().words().containsAll(c.telling()), c::toString));
      assertEquals(expected.isEmpty(), comparison.equal());
      changed += expected.isEmpty() ? 0 : 1;
      equal += expected.isEmpty() ? 1 : 0;
    }
    assertTrue(changed > 10 && equal > 10, changed + " changed, " + equal + " equal");
  }

  @Test
  void aPolicyEqualsItself() {
    EffectivePolicy policy = GeneratedPolicies.policy(7, 6, 12);
    assertTrue(Comparison.of(policy, policy, Prover.BUDGET).equal());
  }

  /** Out of budget is not equal. */
  @Test
  void whatIsUndecidedIsNotEqual() {
    EffectivePolicy policy = GeneratedPolicies.policy(7, 6, 12);
    Comparison comparison = Comparison.of(policy, GeneratedPolicies.policy(7, 6, 12), 0);
    assertFalse(comparison.settled());
    assertFalse(comparison.equal());
  }

  private static Set<String> enumerated(EffectivePolicy first, EffectivePolicy second) {
    EffectiveQuestion one = first.question("use").orElseThrow();
    EffectiveQuestion other = second.question("use").orElseThrow();
    Set<String> changes = new TreeSet<>();
    for (Map<String, Value> each : ReferenceEvaluator.everyCase(first)) {
      Outcome from = ReferenceEvaluator.outcome(first, one, each);
      Outcome to = ReferenceEvaluator.outcome(second, other, each);
      if (from != to) {
        Set<String> before = ReferenceEvaluator.fired(first, one, each);
        Set<String> after = ReferenceEvaluator.fired(second, other, each);
        Set<String> differing = new TreeSet<>(before);
        differing.addAll(after);
        differing.removeIf(r -> before.contains(r) && after.contains(r));
        differing.forEach(r -> changes.add(r + " " + from + " " + to));
      }
    }
    return changes;
  }
}
