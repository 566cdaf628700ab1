package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.prove.Verdict;
import org.tidemark.prove.Witness;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.oracle.Agreement;

/** Provers that are wrong on purpose: the comparison with outside solvers must catch each. */
class WrongProverIsCaughtTest {
  private static final Witness NO_CASE = new Witness(Findings.NONE, List.of(), List.of());
  private static final int GENERATED = 10;

  /** The claims that the decision diagrams decide. */
  private static final List<Claim.Kind> DIAGRAMS =
      List.of(
          Claim.Kind.NO_GAP,
          Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
          Claim.Kind.ALWAYS,
          Claim.Kind.NEVER);

  private static Agreement compared(UnaryOperator<List<Proof>> spoil) {
    Agreement agreement = new Agreement();
    for (long seed = 0; seed < GENERATED; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoAlike(seed, 8, 12);
      Optional<EffectivePolicy> floor = Optional.of(two.get(0));
      EffectivePolicy policy = two.get(1);
      agreement.compare(policy, floor, spoil.apply(new Prover().prove(policy, floor)));
    }
    return agreement;
  }

  private static UnaryOperator<List<Proof>> each(Function<Verdict, Verdict> spoil) {
    return proofs ->
        proofs.stream().map(p -> new Proof(p.claim(), spoil.apply(p.verdict()))).toList();
  }

  private static int refuted(Agreement agreement) {
    return List.of(Claim.Kind.values()).stream().mapToInt(agreement::refuted).sum();
  }

  private static long lines(Agreement agreement, String part) {
    return agreement.disagreements().lines().filter(l -> l.contains(part)).count();
  }

  @Test
  void theProverItselfPasses() {
    assertEquals("", compared(proofs -> proofs).disagreements());
  }

  @Test
  void aProverThatAlwaysSaysProvedIsCaughtOnEveryClaimThatFails() {
    Agreement agreement = compared(each(v -> new Verdict.Proved()));
    assertTrue(refuted(agreement) > 50, "refuted by Z3: " + refuted(agreement));
    assertEquals(refuted(agreement), lines(agreement, "is proved, and Z3 refutes it with"));
    int byDiagrams = DIAGRAMS.stream().mapToInt(agreement::refuted).sum();
    assertTrue(byDiagrams > 0, "a gap or a floor fails");
    assertEquals(byDiagrams, lines(agreement, "is proved, and the diagrams refute it"));
  }

  @Test
  void aProverThatAlwaysSaysRefutedIsCaughtOnEveryClaimThatHolds() {
    Agreement agreement = compared(each(v -> new Verdict.Refuted(NO_CASE)));
    int claimed = agreement.claims() - refuted(agreement) - agreement.unsaid();
    assertTrue(claimed > 50, "proved by Z3: " + claimed);
    assertEquals(claimed, lines(agreement, "is refuted, and Z3 proves it"));
    assertEquals(
        DIAGRAMS.stream().mapToInt(agreement::proved).sum(),
        lines(agreement, "is refuted, and the diagrams prove it"));
  }

  @Test
  void aProverThatCannotTellIsCaughtOnEveryClaim() {
    Agreement agreement = compared(each(v -> new Verdict.Undecided(1)));
    assertEquals(agreement.claims() - agreement.unsaid(), lines(agreement, "is undecided"));
  }

  /** The verdict is right and the case is not one: nothing at all is known in it. */
  @Test
  void aRefutationWithACaseThatShowsNothingIsCaught() {
    Agreement agreement = compared(each(v -> v.proved() ? v : new Verdict.Refuted(NO_CASE)));
    assertTrue(agreement.witnesses() > 20, "cases of the prover: " + agreement.witnesses());
    assertEquals(agreement.witnesses(), lines(agreement, "Z3 does not accept the case"));
  }

  @Test
  void aClaimThatIsNotMadeOrMadeTwiceIsCaught() {
    Agreement fewer = compared(proofs -> proofs.subList(1, proofs.size()));
    assertEquals(GENERATED, lines(fewer, "[NO_GAP, use, ] is not claimed"));
    Agreement more = compared(proofs -> List.of(proofs.get(0), proofs.get(0)));
    assertEquals(GENERATED, lines(more, "a claim was made twice"));
  }
}
