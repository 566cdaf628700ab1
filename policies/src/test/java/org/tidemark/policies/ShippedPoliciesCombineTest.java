package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Policy;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * Every shipped policy passes the checks on the whole, and what loading has to report is reported.
 */
class ShippedPoliciesCombineTest {
  private static Loaded<EffectivePolicy> combine(Policy... layers) {
    return Layering.combine(Shipped.words().vocabulary(), List.of(layers));
  }

  private static List<String> reports(Loaded<?> loaded) {
    return loaded.diagnostics().stream()
        .filter(d -> d.severity() != Severity.NOTICE)
        .map(Diagnostic::message)
        .toList();
  }

  @Test
  void theFloorAndTheHospitalOnItHaveNothingToReport() {
    assertEquals(List.of(), reports(combine(Shipped.floor())));
    assertEquals(List.of(), reports(combine(Shipped.floor(), Shipped.hospital())));
  }

  @Test
  void portsmouthHasNothingToReport() {
    assertEquals(List.of(), reports(combine(Shipped.alone(Shipped.PORTSMOUTH))));
  }

  /**
   * Source: Region Nordjylland, Kontrol af ernæringssonde, tolkning af pH. The page accepts a high
   * reading under conditions, and states a repeat only above 6, so that 6 itself fails without one.
   */
  @Test
  void nordjyllandIsReportedByValue() {
    Loaded<EffectivePolicy> loaded = combine(Shipped.alone(Shipped.NORDJYLLAND));
    assertEquals(
        List.of(
            "`ph` passes at 1.0 to 5.0, 6.5 to 14.0, which takes in its most worrying reading",
            "`ph` 6.0 fails, and no repeat is stated for it"),
        reports(loaded));
    assertTrue(
        loaded.diagnostics().stream()
            .anyMatch(d -> d.message().contains("`ph` 0.0 to 0.5, 5.5 is left open")));
  }

  /**
   * Source: Chest Heart and Stroke Scotland, stroke e-learning, Confirmation of position of a
   * nasogastric tube: 5.5 or below may be used, 5.5 or above may not.
   */
  @Test
  void aReadingThatBothPassesAndFailsIsReportedAndAFilmIsNoSuchReading() {
    String both = Shipped.text(Shipped.NORDJYLLAND + "/policy.yaml");
    String overlapping =
        both.replace("at-most: 5, source", "at-most: 5.5, source")
            .replace("after: {ph: above-six}", "after: {ph: {at-least: 5.5}}");
    Loaded<EffectivePolicy> loaded = combine(load(overlapping));
    List<String> found =
        loaded.diagnostics().stream()
            .filter(d -> d.code() == DiagnosticCode.OVERLAP)
            .map(Diagnostic::message)
            .toList();
    assertEquals(List.of("`ph` 5.5 passes, and also fails by `retest`"), found);
  }

  /**
   * The floor speaks of signs and still leaves them to the hospital: its own rule is not enough.
   */
  @Test
  void aHospitalThatIsSilentOnWhatTheFloorLeavesToItIsRefused() {
    String silent =
        Shipped.text(Shipped.HOSPITAL + "/policy.yaml").replace("about: signs", "about: position");
    Loaded<EffectivePolicy> loaded =
        combine(Shipped.floor(), load(silent, List.of(Shipped.floor())));
    assertEquals(
        List.of(
            "the question `pass` must speak of signs, and no rule does",
            "the question `use` must speak of signs, and no rule does"),
        reports(loaded));
  }

  /** The floor's limit is 5.5: a hospital may go under it and never over it. */
  @Test
  void aHospitalCannotGoOverTheLimitOfItsFloor() {
    assertEquals(List.of(), reports(withCutOff("5.5")));
    assertEquals(
        List.of("`ph-cut-off` is 6 here and 5.5 in the layer below, where only lower is stricter"),
        reports(withCutOff("6.0")));
  }

  private static Loaded<EffectivePolicy> withCutOff(String limit) {
    String changed =
        Shipped.text(Shipped.HOSPITAL + "/policy.yaml").replace("is: 5.0", "is: " + limit);
    return combine(Shipped.floor(), load(changed, List.of(Shipped.floor())));
  }

  private static Policy load(String text) {
    return load(text, List.of());
  }

  private static Policy load(String text, List<Policy> below) {
    PolicyLoader loader = new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography());
    return Shipped.sound(
        loader.load(
            Shipped.sound(new YamlReader().read(SourceText.of("changed.yaml", text))), below));
  }
}
