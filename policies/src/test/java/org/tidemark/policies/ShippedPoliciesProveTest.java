package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Policy;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.prove.Verdict;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * What is promised of every policy, proved of the shipped ones over every case; and copies made
 * worse on purpose, which must be refuted.
 */
class ShippedPoliciesProveTest {
  private static final String HOSPITAL_FILE = Shipped.HOSPITAL + "/policy.yaml";

  @Test
  void everyClaimAboutTheFloorIsProved() {
    assertEquals(
        List.of(), refuted(new Prover().prove(Shipped.policy(Shipped.FLOOR), Optional.empty())));
  }

  @Test
  void everyClaimAboutTheHospitalIsProvedAndItIsNowhereLooserThanItsFloor() {
    List<Proof> proofs =
        new Prover()
            .prove(Shipped.policy(Shipped.HOSPITAL), Optional.of(Shipped.policy(Shipped.FLOOR)));
    assertEquals(List.of(), refuted(proofs));
    assertEquals(
        2,
        proofs.stream()
            .filter(p -> p.claim().kind() == Claim.Kind.NEVER_LOOSER_THAN_FLOOR)
            .count());
  }

  /**
   * The floor at a stricter cut-off than the hospital's: the same as a hospital that loosened it,
   * past every check of the loader.
   */
  @Test
  void aLooserCutOffIsRefutedWithTheReadingThatShowsIt() {
    String strict =
        Shipped.text(Shipped.FLOOR + "/policy.yaml").replace("    is: 5.5", "    is: 4.5");
    Verdict verdict = againstFloor(alone(strict), "use");
    Verdict.Refuted refuted = (Verdict.Refuted) verdict;
    assertTrue(
        refuted.witness().words().contains("What did the strip read? 5.0 pH"),
        refuted.witness().words()::toString);
    assertEquals(
        "example-general-adult: Proceed (Every possibility left open proceeds.)",
        refuted.witness().answers().get(0));
  }

  @Test
  void aRuleTakenOutLeavesAGapThatIsShown() {
    String without =
        cut(
            Shipped.text(HOSPITAL_FILE),
            "      - rule: below-the-range",
            "      - rule: second-high-reading");
    List<Proof> refuted = refuted(new Prover().prove(onFloor(without), Optional.empty()));
    assertEquals(List.of(Claim.Kind.NO_GAP), refuted.stream().map(p -> p.claim().kind()).toList());
    Verdict.Refuted gap = (Verdict.Refuted) refuted.get(0).verdict();
    assertTrue(
        gap.witness().words().stream().anyMatch(w -> w.startsWith("What did the strip read? 0.")),
        gap.witness().words()::toString);
  }

  @Test
  void aRuleThatAnotherSwallowsIsNamed() {
    String doubled =
        Shipped.text(HOSPITAL_FILE)
            .replace(
                "      - rule: below-the-range",
                "      - rule: second-reader-again\n        effect: set-aside\n        which: [acid-aspirate]\n        about: position\n"
                    + "        given: {ph: second-reader, ph-readers: two-differ}\n        next: Ask again.\n      - rule: below-the-range");
    List<Proof> refuted = refuted(new Prover().prove(onFloor(doubled), Optional.empty()));
    assertEquals(
        List.of("second-reader-again"),
        refuted.stream().flatMap(p -> p.claim().subject().stream()).toList());
  }

  private static Verdict againstFloor(EffectivePolicy floor, String question) {
    return new Prover()
        .prove(Shipped.policy(Shipped.HOSPITAL), Optional.of(floor)).stream()
            .filter(
                p ->
                    p.claim().kind() == Claim.Kind.NEVER_LOOSER_THAN_FLOOR
                        && p.claim().question().equals(question))
            .findFirst()
            .orElseThrow()
            .verdict();
  }

  private static EffectivePolicy alone(String text) {
    return Shipped.sound(
        Layering.combine(Shipped.words().vocabulary(), List.of(policy(text, List.of()))));
  }

  private static EffectivePolicy onFloor(String text) {
    List<Policy> layers = List.of(Shipped.floor(), policy(text, List.of(Shipped.floor())));
    return Shipped.sound(Layering.combine(Shipped.words().vocabulary(), layers));
  }

  private static Policy policy(String text, List<Policy> below) {
    return Shipped.sound(
        new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
            .load(
                Shipped.sound(new YamlReader().read(SourceText.of("changed.yaml", text))), below));
  }

  private static String cut(String text, String from, String until) {
    return text.substring(0, text.indexOf(from)) + text.substring(text.indexOf(until));
  }

  private static List<Proof> refuted(List<Proof> proofs) {
    return proofs.stream().filter(p -> !p.verdict().proved()).toList();
  }
}
