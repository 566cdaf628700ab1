package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Prover;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.oracle.Agreement;

/**
 * Every claim decided again by solvers that nobody here wrote, from the model alone: Z3 decides all
 * of them, JDD's decision diagrams decide gaps and floors. All must agree, Z3 must accept the
 * prover's cases, and the ordinary evaluator must answer Z3's cases as Z3 says. A solver that
 * cannot tell fails the test.
 */
class OutsideOracleTest {
  private static final int GENERATED = 100;

  private final Prover prover = new Prover();
  private final Agreement agreement = new Agreement();

  private void compare(EffectivePolicy policy, Optional<EffectivePolicy> floor) {
    agreement.compare(policy, floor, prover.prove(policy, floor));
  }

  @Test
  void theSolversAgreeOnEveryClaimAboutTheShippedPolicies() {
    EffectivePolicy floor = Shipped.policy(Shipped.FLOOR);
    compare(floor, Optional.empty());
    compare(Shipped.policy(Shipped.HOSPITAL), Optional.of(floor));
    assertEquals("", agreement.disagreements());
    for (Claim.Kind kind : Claim.Kind.values()) {
      assertTrue(agreement.proved(kind) > 0, kind + " was claimed");
      assertEquals(0, agreement.refuted(kind), kind + " holds");
    }
    assertTrue(agreement.replayed() > 100, "cases of Z3: " + agreement.replayed());
    assertEquals(6, agreement.diagrams(), "no gap four times, the floor twice");
  }

  /** The readings of published pages are no policies to work by, and some claims do fail. */
  @Test
  void theSolversAgreeOnTheReadingsOfPublishedPages() {
    compare(Shipped.policy(Shipped.PORTSMOUTH), Optional.empty());
    compare(Shipped.policy(Shipped.NORDJYLLAND), Optional.empty());
    assertEquals("", agreement.disagreements());
    assertTrue(agreement.refuted(Claim.Kind.NO_GAP) > 0, "a published page leaves a gap");
  }

  @Test
  void theSolversAgreeOnGeneratedPoliciesTooLargeToEnumerate() {
    for (int seed = 0; seed < GENERATED; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoAlike(seed, 8 + seed % 5, 10 + seed % 21);
      compare(two.get(1), Optional.of(two.get(0)));
    }
    assertEquals("", agreement.disagreements());
    for (Claim.Kind kind :
        List.of(
            Claim.Kind.NO_GAP,
            Claim.Kind.OUTCOME_REACHABLE,
            Claim.Kind.RULE_MATTERS,
            Claim.Kind.ALLOW_CAN_PROCEED,
            Claim.Kind.WORSE_NEVER_LOOSENS,
            Claim.Kind.NEVER_LOOSER_THAN_FLOOR)) {
      assertTrue(agreement.proved(kind) >= 10, kind + " holds " + agreement.proved(kind));
      assertTrue(agreement.refuted(kind) >= 10, kind + " fails " + agreement.refuted(kind));
    }
    assertTrue(agreement.witnesses() >= 300, "cases of the prover: " + agreement.witnesses());
    assertTrue(agreement.replayed() >= 2_000, "cases of Z3: " + agreement.replayed());
    assertEquals(2 * GENERATED, agreement.diagrams());
  }
}
