package org.tidemark.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.testkit.HostilePolicies;
import org.tidemark.testkit.TreeTable;

/**
 * Policies made to be hard: an answer may be undecided, and is then a hold; it is never guessed.
 */
class HostileTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private static Decision nothingKnown(EffectivePolicy policy, int budget) {
    return Decider.of(policy, "use", budget).orElseThrow().decide(Findings.NONE, TODAY);
  }

  @Test
  void aSpentBudgetIsAHoldAndMoreStepsNeverContradictWhatFewerSettled() {
    Map<Kind, Integer> seen = new EnumMap<>(Kind.class);
    for (long seed = 0; seed < 20; seed++) {
      EffectivePolicy policy = HostilePolicies.policy(seed, 30, 65);
      Decision full = nothingKnown(policy, 1_000_000);
      assertTrue(full.kind() != Kind.UNDECIDED, "seed " + seed);
      for (int budget : new int[] {2, 20, 200, 2_000}) {
        Decision few = nothingKnown(policy, budget);
        seen.merge(few.kind(), 1, Integer::sum);
        if (few.kind() == Kind.UNDECIDED) {
          assertEquals(Outcome.HOLD, few.outcome());
        } else {
          assertEquals(full.kind(), few.kind(), "seed " + seed + ", budget " + budget);
          assertTrue(few.ask().containsAll(full.ask()), "what can still matter is asked");
        }
      }
    }
    assertTrue(seen.getOrDefault(Kind.UNDECIDED, 0) > 10, seen::toString);
    assertTrue(seen.keySet().size() > 1, seen::toString);
  }

  /** Here the only hold is that of a case which no row takes, and there is none, or hardly one. */
  @Test
  void inATreeWithNothingKnownEveryOutcomeIsSettled() {
    TreeTable whole = TreeTable.complete(4, 6, 300);
    assertEquals(Kind.UNSETTLED, nothingKnown(whole.policy(), Decider.BUDGET).kind());
    assertEquals(
        EnumSet.allOf(Outcome.class), nothingKnown(whole.policy(), Decider.BUDGET).possible());
  }
}
