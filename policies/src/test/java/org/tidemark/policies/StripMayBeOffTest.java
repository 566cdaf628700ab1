package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.count.Deriving;
import org.tidemark.decide.CountsAs;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Grounds;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.PolicyLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Policy;
import org.tidemark.print.Shown;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.report.DecisionText;
import org.tidemark.report.DmnExport;
import org.tidemark.report.ProofsText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.trial.AnswerTable;
import org.tidemark.trial.AnswerTables;
import org.tidemark.yaml.YamlReader;

/**
 * Where a policy says that a reading may be off, everything that is said of a reading is said of
 * all that it may be: at the limit, in what would let it proceed, on the sign-off sheet, in a
 * record.
 */
class StripMayBeOffTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String FOLDER = "constructs/strip-may-be-off";
  private static final String WRITTEN = Shipped.text(FOLDER + "/policy.yaml");
  private static final String ERROR = "is: 0.5\n    unit: pH\n    how-far-off: ph\n";

  private static Policy read(String text, List<Policy> below) {
    return Shipped.sound(load(text, below));
  }

  private static Loaded<Policy> load(String text, List<Policy> below) {
    return new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
        .load(Shipped.sound(new YamlReader().read(SourceText.of("policy.yaml", text))), below);
  }

  private static EffectivePolicy exactly() {
    return Shipped.sound(
        Layering.combine(
            Shipped.words().vocabulary(),
            List.of(read(WRITTEN.replace(ERROR, "is: 0.5\n    unit: pH\n"), List.of()))));
  }

  /** A unit that builds on the hospital, with these values. */
  private static Loaded<EffectivePolicy> unit(String values) {
    return unit(Shipped.alone(FOLDER), values);
  }

  private static Loaded<EffectivePolicy> unit(Policy hospital, String values) {
    String text =
        """
        policy: strip-on-the-unit
        kind: unit
        title: "An example of the language"
        owner: A hospital that does not exist
        edition: 1
        status: draft
        approved: not-stated
        review-by: not-stated
        words-from: {vocabulary: nasogastric-tube, edition: 1}
        for: {population: adult}
        builds-on: strip-may-be-off
        values:
          %s
        questions:
          use:
            asks: May anything go down this tube now?
        """
            .formatted(values);
    return load(text, List.of(hospital))
        .match(
            unit -> Layering.combine(Shipped.words().vocabulary(), List.of(hospital, unit)),
            Loaded::<EffectivePolicy>broken);
  }

  private static Findings findings(String text) {
    return Shipped.sound(
        FindingsLoader.load(
            Shipped.sound(new YamlReader().read(SourceText.of("findings", text))),
            Shipped.words().vocabulary()));
  }

  private static Findings reading(String ph) {
    return findings("{population: adult, aspirate: obtained, strip: gastric, ph: " + ph + "}");
  }

  private static String said(EffectivePolicy policy, Findings findings) {
    Decider decider = Decider.of(policy, "use").orElseThrow();
    Decision decision = decider.decide(findings, TODAY);
    Grounds grounds = decider.grounds(findings, decision, TODAY);
    Grounds all = decision.settled() ? grounds : grounds.with(decider.routes(findings, TODAY));
    return DecisionText.of(decision, all, policy.vocabulary(), Optional.empty());
  }

  @Test
  void theAnswerSaysWhatTheReadingCountsAs() {
    Decision decision =
        Decider.of(Shipped.policy(FOLDER), "use").orElseThrow().decide(reading("5.0"), TODAY);
    assertEquals(
        List.of(
            "A reading of 5.0 pH counts as 4.5 to 5.5 pH: this policy says a reading may be off by 0.5 pH."),
        decision.countsAs().stream().map(CountsAs::sentence).toList());
    String said = said(Shipped.policy(FOLDER), reading("5.0"));
    assertTrue(
        said.contains("A reading of 5.0 pH counts as 4.5 to 5.5 pH: this policy says"), said);
    assertTrue(
        said.contains("What did the strip read? It was read, and the reading leaves this open."),
        said);
    assertFalse(said(exactly(), reading("5.0")).contains("counts as"));
  }

  /** What is to be read must do with all that it counts as: 5.0 is the limit, and not enough. */
  @Test
  void whatWouldLetItProceedIsAReadingThatPassesByAsMuch() {
    String anew = said(Shipped.policy(FOLDER), reading("6.0"));
    assertTrue(anew.contains("What did the strip read? 0.0 to 4.5 pH. Test a new sample."), anew);
    assertTrue(
        said(exactly(), reading("6.0"))
            .contains("What did the strip read? 0.0 to 5.0 pH. Test a new sample."));
    String open = said(Shipped.policy(FOLDER), reading("5.0"));
    assertTrue(open.contains("What did the strip read? 0.0 to 4.5 pH."), open);
    assertTrue(
        open.contains("None: a reading near a limit can leave it open, since it may be off."),
        open);
  }

  @Test
  void theSheetHasARowWhereTheAnswerToAReadingChanges() {
    AnswerTables tables =
        new AnswerTables(Shipped.policy(FOLDER), "use", Shipped.words(), Findings.NONE, TODAY);
    AnswerTable table = tables.atLimits().get(0);
    List<String> rows =
        table.rows().stream()
            .map(r -> r.value() + ": " + r.answers().get(0).map(Decision::word).orElse("-"))
            .filter(r -> r.contains("counts"))
            .toList();
    assertEquals(
        List.of(
            "0.0 pH, counts as 0.0 to 0.5 pH: Proceed",
            "4.0 pH, counts as 3.5 to 4.5 pH: Proceed",
            "4.5 pH, counts as 4.0 to 5.0 pH: Proceed",
            "5.0 pH, counts as 4.5 to 5.5 pH: Do not feed",
            "5.5 pH, counts as 5.0 to 6.0 pH: Do not feed",
            "6.0 pH, counts as 5.5 to 6.5 pH: Do not feed",
            "14.0 pH, counts as 13.5 to 14.0 pH: Do not feed"),
        rows);
  }

  /** Claims are about what is so, and do not change with how exactly it is known. */
  @Test
  void claimsAreProvedAndRefutedAsWithoutIt() {
    assertEquals(proofs(exactly()), proofs(Shipped.policy(FOLDER)));
  }

  private static List<String> proofs(EffectivePolicy policy) {
    List<Proof> proofs = new Prover().prove(policy, Optional.empty());
    return proofs.stream().map(p -> p.claim().sentence() + " " + p.verdict()).toList();
  }

  @Test
  void compareSaysThatReadingsAreKnownLessExactlyAndCallsThemNotEqual() {
    Comparison comparison = Comparison.of(exactly(), Shipped.policy(FOLDER), Prover.BUDGET);
    assertEquals(
        List.of(
            "How far a reading of `ph` may be off: was not stated, is now 0.5 pH. Readings that near a limit are answered more cautiously."),
        comparison.readings());
    assertTrue(comparison.settled());
    assertFalse(comparison.equal());
    assertEquals(List.of(), comparison.changes());
    assertTrue(
        ProofsText.of(exactly(), Shipped.policy(FOLDER), comparison)
            .contains("How far a reading of `ph` may be off: was not stated, is now 0.5 pH."));
    Comparison back = Comparison.of(Shipped.policy(FOLDER), exactly(), Prover.BUDGET);
    assertTrue(back.readings().get(0).endsWith("less cautiously."), back.readings()::toString);
  }

  @Test
  void itIsShownWithTheNumbers() {
    assertEquals(
        List.of("0.5, by which a reading of ph may be off to either side"),
        Shown.of(Shipped.policy(FOLDER)).stream()
            .filter(e -> e.name().equals("strip-error"))
            .map(Shown.Entry::holds)
            .toList());
  }

  @Test
  void decisionTablesCannotSayItSoItIsNotExported() {
    EffectivePolicy policy = Shipped.policy(FOLDER);
    assertEquals(
        Optional.of(
            "Not exported: the policy says how far readings of `ph` may be off, and a decision table takes each reading as it is."),
        DmnExport.refused(policy, policy.questions()));
    assertThrows(IllegalArgumentException.class, () -> DmnExport.of(policy, policy.questions()));
    assertEquals(Optional.empty(), DmnExport.refused(exactly(), exactly().questions()));
  }

  /** A layer above may allow for more, and need not say again what it is about. */
  @ParameterizedTest
  @CsvSource({
    "'strip-error: {is: 1.0, unit: pH}', 1.0",
    "'strip-error: {is: 0.5, unit: pH, how-far-off: ph}', 0.5",
    "'ph-cut-off: {is: 4.5, unit: pH}', 0.5"
  })
  void aLayerMayAllowForMore(String value, BigDecimal far) {
    EffectivePolicy unit = Shipped.sound(unit(value));
    assertEquals(0, far.compareTo(unit.howFarOff("ph").orElseThrow()));
  }

  @Test
  void withMoreAllowedForLessPasses() {
    EffectivePolicy unit = Shipped.sound(unit("strip-error: {is: 1.0, unit: pH}"));
    Decider decider = Decider.of(unit, "use").orElseThrow();
    assertEquals("Proceed", decider.decide(reading("4.0"), TODAY).word());
    assertEquals("Do not feed", decider.decide(reading("4.5"), TODAY).word());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "strip-error: {is: not-stated, unit: pH}|`strip-error` may not be changed by a layer above",
        "strip-error: {is: 0.7, unit: pH}|`ph` is read in steps of 0.5",
        "strip-error: {is: 0, unit: pH}|a reading of `ph` cannot be off by 0",
        "strip-error: {is: 1, unit: cm}|`ph` is read in pH, and this is in another unit",
        "strip-error: {is: 1, unit: cm, how-far-off: length-change}|`strip-error` is about something else in a layer below",
        "ours: {is: 1, unit: pH, how-far-off: ph}|how far `ph` may be off is said by a layer below"
      })
  void aLayerMayNotAllowForLessOrSayItAnotherWay(String value, String message) {
    List<String> said =
        unit(value)
            .match(good -> List.of(), errors -> errors.stream().map(Diagnostic::message).toList());
    assertTrue(said.contains(message), said::toString);
  }

  @Test
  void lessThanTheLayerBelowIsLooser() {
    Policy hospital = read(WRITTEN.replace("is: 0.5", "is: 1.0"), List.of());
    List<String> said =
        unit(hospital, "strip-error: {is: 0.5, unit: pH}")
            .match(good -> List.of(), errors -> errors.stream().map(Diagnostic::message).toList());
    assertEquals(
        List.of(
            "`strip-error` is 0.5 here and 1 in the layer below, where only higher is stricter"),
        said);
  }

  /** The hospital with a strip that may be off, and a lapse by an angle that is seen. */
  private static EffectivePolicy hospital(String error) {
    String text =
        Shipped.text(Shipped.HOSPITAL + "/policy.yaml")
            .replace("values:\n", "values:\n" + error)
            .replace(
                "lapses:\n",
                "lapses:\n  - {lapse: lying-flat, when: \"With the head end low.\", seen: {head-angle: {below: 30}}}\n");
    Policy floor = Shipped.floor();
    return Shipped.sound(
        Layering.combine(Shipped.words().vocabulary(), List.of(floor, read(text, List.of(floor)))));
  }

  private static final String OFF =
      """
        strip-error: {is: 0.5, unit: pH, how-far-off: ph, why: "Ours."}
        angle-error: {is: 5, unit: degrees, how-far-off: head-angle, why: "Ours."}
      """;

  private static String derived(String error, String now, String record, String finding) {
    EffectivePolicy policy = hospital(error);
    return Shipped.sound(
            Deriving.of(policy)
                .derive(
                    findings(now),
                    Shipped.sound(
                        new YamlReader()
                            .read(
                                SourceText.of("record.yaml", record),
                                root -> RecordLoader.load(root, policy.vocabulary())))))
        .findings()
        .entry(finding)
        .orElseThrow()
        .seen()
        .words();
  }

  /** An earlier reading of 5.0 may have been 5.5, too high, and then the wait was cut short. */
  @Test
  void anEarlierReadingOfTheRecordCountsAsAllThatItMayBe() {
    String reading =
        "{at: 2026-09-01 %s, check: this-one, ph: %s, strip: gastric, strip-step: 0.5, strip-highest: 6.5, drawn: before-first-check, down-before: nothing, read-after: 20, ph-readers: one}";
    String record =
        "ph-readings: ["
            + reading.formatted("13:00", "5.0")
            + ", "
            + reading.formatted("13:59", "4.0")
            + "]";
    assertEquals("none", derived("", "{}", record, "checks-since"));
    assertEquals("none or wait-cut-short", derived(OFF, "{}", record, "checks-since"));
  }

  /** A check that a low angle ends may have ended near the limit, and surely ended below. */
  @ParameterizedTest
  @CsvSource({
    "35, standing, standing",
    "34, standing, lapsed or standing",
    "30, standing, lapsed or standing",
    "29, lapsed, lapsed or standing",
    "25, lapsed, lapsed or standing",
    "24, lapsed, lapsed"
  })
  void aCheckMayHaveEndedByAReading(String angle, String exactly, String mayBeOff) {
    String record =
        """
        now: 2026-09-01 14:30
        events:
          - {at: 2026-09-01 08:00, event: tube-passed}
          - {at: 2026-09-01 08:30, event: position-confirmed}
        """;
    String now = "{occasion: running, head-angle: " + angle + "}";
    assertEquals(exactly, derived("", now, record, "confirmation"));
    assertEquals(mayBeOff, derived(OFF, now, record, "confirmation"));
  }
}
