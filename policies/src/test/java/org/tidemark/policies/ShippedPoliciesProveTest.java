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
    assertEquals(
        List.of("NO_GAP of use", "NO_GAP of feed"),
        refuted.stream().map(p -> p.claim().kind() + " of " + p.claim().question()).toList(),
        "feed comes after use");
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

  /** What the floor says of every answer is claimed of each policy above it, and of itself. */
  @Test
  void whatTheFloorSaysBindsTheHospital() {
    assertEquals(
        List.of("no-passing-without-help", "elsewhere-is-escalated", "only-two-ways-to-begin"),
        stated(Shipped.policy(Shipped.FLOOR)));
    assertEquals(
        List.of(
            "elsewhere-is-escalated",
            "fresh-operation-goes-to-the-surgeons",
            "no-lone-reader-near-the-limit",
            "no-passing-without-help",
            "only-two-ways-to-begin"),
        stated(Shipped.policy(Shipped.HOSPITAL)).stream().sorted().toList());
  }

  private static List<String> stated(EffectivePolicy policy) {
    return new Prover()
        .prove(policy, Optional.empty()).stream()
            .map(Proof::claim)
            .filter(c -> c.kind() == Claim.Kind.ALWAYS || c.kind() == Claim.Kind.NEVER)
            .flatMap(c -> c.subject().stream())
            .toList();
  }

  /** The second reader is asked for only where two readers differ: one reader alone is enough. */
  @Test
  void aStatementThatTheRulesDoNotKeepIsRefutedWithACase() {
    String looser =
        Shipped.text(HOSPITAL_FILE)
            .replace("ph-readers: [one, two-differ]}", "ph-readers: [two-differ]}");
    List<Proof> refuted = refuted(new Prover().prove(onFloor(looser), Optional.empty()));
    assertEquals(
        List.of("Near the limit nothing goes down on the word of one reader."),
        refuted.stream().map(p -> p.claim().sentence()).toList());
    Verdict.Refuted shown = (Verdict.Refuted) refuted.get(0).verdict();
    assertTrue(
        shown.witness().words().contains("Who has read this strip? One person"),
        shown.witness().words()::toString);
    assertEquals(
        List.of("example-general-adult: Proceed (Every possibility left open proceeds.)"),
        shown.witness().answers());
  }

  /** A ward that waits longer before it calls is told of the floor's own words. */
  @Test
  void aLayerThatLosesARuleOfTheFloorBreaksTheFloorsWord() {
    String weak =
        cut(
            Shipped.text(Shipped.FLOOR + "/policy.yaml"),
            "      - rule: wrong-place",
            "      - rule: breathing-trouble-stops");
    List<Proof> refuted = refuted(new Prover().prove(alone(weak), Optional.empty()));
    assertTrue(
        refuted.stream()
            .anyMatch(p -> p.claim().subject().equals(Optional.of("elsewhere-is-escalated"))),
        refuted::toString);
  }

  /** The floor made stricter where no search over findings would see it. */
  @Test
  void aLooserListClockOrBanIsRefutedWithBothPlaces() {
    String strict =
        Shipped.text(Shipped.FLOOR + "/policy.yaml")
            .replace("    is: 24", "    is: 6")
            .replace("on: [vomited, retched, coughing-bout]", "on: [vomited, retched, suctioned]")
            .replace("    - step: water\n      never:", "    - step: soup\n      never:")
            .replace("\"what to do now\"]", "\"what to do now\", \"who read it\"]")
            .replace("Do not put litmus paper on a tray.", "Do not put litmus on a tray.")
            .replace("speaks-of: [position, signs]", "speaks-of: [position, signs, posture]")
            .replace("left-to-hospital: [signs]", "left-to-hospital: [signs, posture]");
    List<Proof> refuted =
        refuted(new Prover().prove(Shipped.policy(Shipped.HOSPITAL), Optional.of(alone(strict))));
    assertEquals(
        List.of(
            "value check-every",
            "question use",
            "lapse vomiting-or-coughing",
            "steps fallback",
            "tray every-tray",
            "record at-film"),
        refuted.stream()
            .filter(p -> p.claim().kind() == Claim.Kind.LIST_NEVER_LOOSER)
            .flatMap(p -> p.claim().subject().stream())
            .toList());
    Verdict.Refuted clock = (Verdict.Refuted) refuted.get(refuted.size() - 6).verdict();
    assertTrue(
        clock.witness().answers().get(0).startsWith("The floor has it here: changed.yaml:"),
        clock.witness().answers()::toString);
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
