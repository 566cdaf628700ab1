package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.decide.Kind;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.load.FindingsLoader;
import org.tidemark.model.Contact;
import org.tidemark.model.Effect;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * What an answer carries, on the shipped demo policy: words, reasons with layer and source, needs,
 * next steps, contacts, cautions.
 */
class AnswersTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Decider USE =
      Decider.of(Shipped.policy(Shipped.HOSPITAL), "use").orElseThrow();
  private static final Decider PASS =
      Decider.of(Shipped.policy(Shipped.HOSPITAL), "pass").orElseThrow();
  private static final String CLEAN =
      "population: adult, place: ward, tube-purpose: feeding, tube-state: in, occasion: later-use, any-sign: none,"
          + " any-change: none, any-risk: none, any-warning: none, aspirate: obtained, strip: gastric, film: none";

  private static Findings findings(String more) {
    String text = "{" + CLEAN + more + "}";
    return Shipped.sound(
        FindingsLoader.load(
            Shipped.sound(new YamlReader().read(SourceText.of("findings", text))),
            Shipped.words().vocabulary()));
  }

  private static Decision use(String more) {
    return USE.decide(findings(more), TODAY);
  }

  @Test
  void proceedsAtTheCutOffWithTwoReaders() {
    Decision decision = use(", ph: 5.0, ph-readers: two-agree");
    assertEquals(Outcome.PROCEED, decision.outcome());
    assertEquals("Proceed", decision.word());
    assertEquals(Kind.PROCEEDS, decision.kind());
    assertEquals(List.of(), decision.ask());
    assertEquals(List.of(), decision.next());
    Reason reason = decision.reasons().get(0);
    assertEquals("acid-aspirate", reason.rule());
    assertEquals("floor-england-adult", reason.layer());
    assertEquals(
        "Aspirate of pH 1.0 to 5.0 is not from the airway.", reason.because().orElseThrow());
    assertEquals(List.of("PH-01", "MT-01", "MT-02", "PH-31"), reason.sources());
    assertTrue(
        decision.cautions().contains("This does not rule out: A tip in the gullet."),
        decision.cautions()::toString);
    assertTrue(
        decision.writeDown().contains("pH, or that nothing came"), decision.writeDown()::toString);
  }

  @Test
  void holdsOneStepAboveTheCutOffAndSaysWhatToDo() {
    Decision decision = use(", ph: 5.5, ph-readers: two-agree, checks-since: none");
    assertEquals(Outcome.HOLD, decision.outcome());
    assertEquals("Do not feed", decision.word());
    assertEquals(Kind.NOT_YET, decision.kind());
    assertEquals(
        "After the first high reading, put nothing down the tube for 60 minutes.",
        decision.next().get(0));
    assertTrue(
        decision.next().contains("Then draw on the tube for at least 1 mL and test again, once."),
        decision.next()::toString);
  }

  @Test
  void asksForASecondReaderNearTheCutOff() {
    Decision decision = use(", ph: 4.5, ph-readers: one");
    assertEquals(Outcome.HOLD, decision.outcome());
    assertTrue(
        decision.reasons().stream()
            .anyMatch(r -> r.rule().equals("acid-aspirate") && r.setAside()));
    assertEquals("Ask a second trained person to read the strip.", decision.next().get(0));
    assertEquals(Outcome.PROCEED, use(", ph: 4.0, ph-readers: one").outcome());
  }

  @Test
  void holdsAndAsksWhenThePhIsMissing() {
    Decision decision = use("");
    assertEquals(Outcome.HOLD, decision.outcome());
    assertEquals(Kind.UNSETTLED, decision.kind());
    assertEquals(Set.of(Outcome.PROCEED, Outcome.HOLD), decision.possible());
    assertEquals(List.of("ph", "ph-readers"), decision.ask().stream().map(Need::finding).toList());
    assertEquals("pH", decision.ask().get(0).unit());
  }

  @Test
  void escalatesWithANewBreathingSignWhateverTheStripSays() {
    Decision decision =
        USE.decide(
            findings(", ph: 4.0, ph-readers: two-agree")
                .without("any-sign")
                .with("any-sign", entry("some"))
                .with("breathing", entry("new")),
            TODAY);
    assertEquals(Outcome.ESCALATE, decision.outcome());
    assertEquals("Stop and call", decision.word());
    assertEquals("Stop what is running.", decision.next().get(0));
    assertEquals(
        List.of("Critical care outreach"), decision.call().stream().map(Contact::who).toList());
    assertEquals(Effect.ESCALATE, decision.reasons().get(0).effect());
    assertTrue(
        decision.reasons().stream().anyMatch(r -> r.rule().equals("acid-aspirate")),
        "the good strip is still told");
  }

  private static Findings.Entry entry(String option) {
    return new Findings.Entry(
        org.tidemark.model.Seen.option(option),
        org.tidemark.source.Place.at(SourceText.of("test", "x").beginning()));
  }

  /** A strip between two pads is a band; it proceeds only when all of it would. */
  @Test
  void aBandProceedsOnlyWhenAllOfItDoes() {
    assertEquals(
        Outcome.PROCEED, use(", ph: {at-least: 3.5, at-most: 4.0}, ph-readers: one").outcome());
    Decision across =
        use(", ph: {at-least: 5.0, at-most: 5.5}, ph-readers: two-agree, checks-since: none");
    assertEquals(Outcome.HOLD, across.outcome());
    assertEquals(Set.of(Outcome.PROCEED, Outcome.HOLD), across.possible());
  }

  @Test
  void whatMustNotCountIsAnsweredAndChangesNothing() {
    Decision decision = use(", air-listening: heard, calm: \"yes\"");
    assertEquals(Outcome.HOLD, decision.outcome());
    assertEquals(
        List.of("air-listening", "calm"),
        decision.doesNotCount().stream().map(DoesNotCount::finding).sorted().toList());
    DoesNotCount air =
        decision.doesNotCount().stream()
            .filter(d -> d.finding().equals("air-listening"))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("MT-03"), air.sources());
    assertFalse(air.because().isBlank());
  }

  @Test
  void aPatientOutsideTheScopeIsSentToTheOtherPolicy() {
    Decision decision =
        USE.decide(findings(", ph: 4.0").with("population", entry("newborn")), TODAY);
    assertEquals(Outcome.HOLD, decision.outcome());
    assertTrue(
        decision.next().contains("Use the policy example-general-newborn instead."),
        decision.next()::toString);
  }

  @Test
  void warnsAfterTheReviewDateAndStampsThePolicy() {
    LocalDate lastDay = LocalDate.of(2028, 9, 1);
    String warning =
        "This policy's review date was 1 September 2028. Check that it is still in force.";
    Findings findings = findings(", ph: 4.0, ph-readers: one");
    assertFalse(USE.decide(findings, lastDay).cautions().contains(warning));
    assertTrue(USE.decide(findings, lastDay.plusDays(1)).cautions().contains(warning));
    Decision decision = USE.decide(findings, TODAY);
    assertEquals("example-general-adult", decision.stamp().policy());
    assertEquals(3, decision.stamp().edition());
    assertEquals(List.of("floor-england-adult"), decision.stamp().builtOn());
    assertTrue(
        decision
            .cautions()
            .contains(
                "This supports trained staff. Your hospital's policy and licensed practice decide."));
  }

  @Test
  void aFloorNeverProceeds() {
    Decider floor = Decider.of(Shipped.policy(Shipped.FLOOR), "use").orElseThrow();
    Decision decision = floor.decide(findings(", ph: 4.0, ph-readers: two-agree"), TODAY);
    assertEquals(Outcome.HOLD, decision.outcome());
    assertTrue(
        decision.reasons().stream().anyMatch(r -> r.rule().equals("not-spoken-of:signs")),
        decision.reasons()::toString);
  }

  @Test
  void passingTheTubeIsItsOwnQuestionWithItsOwnWords() {
    Decision decision = PASS.decide(Findings.NONE, TODAY);
    assertEquals("May this tube be passed here and now?", decision.asks());
    assertEquals("Do not pass it yet", decision.word());
    assertEquals(Outcome.HOLD, decision.outcome());
    assertEquals("population", decision.ask().get(0).finding());
  }
}
