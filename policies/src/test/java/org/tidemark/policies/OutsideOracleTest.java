package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.model.Policy;
import org.tidemark.model.Question;
import org.tidemark.model.Rule;
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
  private static final int TRIMMED = 100;
  private static final int LOST = 6;
  private static final int SMALL = 500;

  /** Lists are held against lists; all other claims are searched for a case. */
  private static final List<Claim.Kind> SEARCHED =
      Stream.of(Claim.Kind.values()).filter(k -> k != Claim.Kind.LIST_NEVER_LOOSER).toList();

  private static final List<Claim.Kind> BOTH =
      List.of(
          Claim.Kind.NO_GAP,
          Claim.Kind.OUTCOME_REACHABLE,
          Claim.Kind.RULE_MATTERS,
          Claim.Kind.ALLOW_CAN_PROCEED,
          Claim.Kind.WORSE_NEVER_LOOSENS,
          Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
          Claim.Kind.ALWAYS,
          Claim.Kind.NEVER);

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
    for (Claim.Kind kind : SEARCHED) {
      assertTrue(agreement.proved(kind) > 0, kind + " was claimed");
      assertEquals(0, agreement.refuted(kind), kind + " holds");
    }
    assertTrue(agreement.replayed() > 100, "cases of Z3: " + agreement.replayed());
    assertEquals(16, agreement.diagrams(), "no gap 6 times, the floor twice, 8 statements");
  }

  /** The readings of published pages are no policies to work by, and some claims do fail. */
  @Test
  void theSolversAgreeOnTheReadingsOfPublishedPages() {
    compare(Shipped.policy(Shipped.PORTSMOUTH), Optional.empty());
    compare(Shipped.policy(Shipped.NORDJYLLAND), Optional.empty());
    assertEquals("", agreement.disagreements());
    assertTrue(agreement.refuted(Claim.Kind.NO_GAP) > 0, "a published page leaves a gap");
  }

  /** The hospital on a floor that lost a rule, held against the whole floor. */
  @Test
  void theSolversAgreeWhereTheFloorLostARule() {
    Policy floor = Shipped.floor();
    int compared = 0;
    for (Rule rule : floor.questions().get(1).rules()) {
      List<Policy> layers = List.of(without(floor, rule), Shipped.hospital());
      Optional<EffectivePolicy> combined =
          Layering.combine(Shipped.words().vocabulary(), layers)
              .match(Optional::of, refused -> Optional.empty());
      if (combined.isPresent() && compared < LOST) {
        compare(combined.get(), Optional.of(Shipped.policy(Shipped.FLOOR)));
        compared++;
      }
    }
    assertEquals(LOST, compared, "floors that lost a rule");
    assertEquals("", agreement.disagreements());
    assertTrue(agreement.refuted(Claim.Kind.NEVER_LOOSER_THAN_FLOOR) > 0, "a lost rule is missed");
  }

  private static Policy without(Policy policy, Rule lost) {
    List<Question> questions =
        policy.questions().stream()
            .map(
                q ->
                    new Question(
                        q.name(),
                        q.asks(),
                        q.words(),
                        q.speaksOf(),
                        q.leftToHospital(),
                        q.rules().stream().filter(r -> !r.equals(lost)).toList(),
                        q.place()))
            .toList();
    return new Policy(
        policy.header(),
        policy.values(),
        policy.bands(),
        policy.barred(),
        policy.terms(),
        questions,
        policy.care(),
        policy.notStated(),
        policy.declared());
  }

  @Test
  void theSolversAgreeOnGeneratedPoliciesTooLargeToEnumerate() {
    for (int seed = 0; seed < GENERATED; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoAlike(seed, 8 + seed % 5, 10 + seed % 21);
      compare(two.get(1), Optional.of(two.get(0)));
    }
    assertEquals("", agreement.disagreements());
    bothVerdictsOccur(10, BOTH);
    assertTrue(agreement.witnesses() >= 300, "cases of the prover: " + agreement.witnesses());
    assertTrue(agreement.replayed() >= 2_000, "cases of Z3: " + agreement.replayed());
    assertEquals(2 * GENERATED + stated(agreement), agreement.diagrams());
  }

  @Test
  void theSolversAgreeOnGeneratedPoliciesWithAllThatAPolicyMayHave() {
    for (int seed = 0; seed < TRIMMED; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoTrimmed(seed, 8 + seed % 5, 10 + seed % 21);
      compare(two.get(1), Optional.of(two.get(0)));
    }
    assertEquals("", agreement.disagreements());
    bothVerdictsOccur(10, BOTH);
    bothVerdictsOccur(10, List.of(Claim.Kind.BARRED_NEVER_LOOSENS));
  }

  /**
   * Few rules leave wide cells: a band that no rule looks at may then end inside one, and a policy
   * may never hold anything.
   */
  @Test
  void theSolversAgreeOnManySmallPolicies() {
    for (int seed = 0; seed < SMALL; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoTrimmed(seed, 2 + seed % 3, 3 + seed % 4);
      compare(two.get(1), Optional.of(two.get(0)));
    }
    assertEquals("", agreement.disagreements());
    bothVerdictsOccur(20, BOTH);
    bothVerdictsOccur(1, SEARCHED);
  }

  private static int stated(Agreement agreement) {
    return Stream.of(Claim.Kind.ALWAYS, Claim.Kind.NEVER)
        .mapToInt(k -> agreement.proved(k) + agreement.refuted(k))
        .sum();
  }

  private void bothVerdictsOccur(int times, List<Claim.Kind> kinds) {
    for (Claim.Kind kind : kinds) {
      assertTrue(agreement.proved(kind) >= times, kind + " holds " + agreement.proved(kind));
      assertTrue(agreement.refuted(kind) >= times, kind + " fails " + agreement.refuted(kind));
    }
  }
}
