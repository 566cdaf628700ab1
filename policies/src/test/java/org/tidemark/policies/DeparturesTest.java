package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Grounds;
import org.tidemark.decide.Kind;
import org.tidemark.decide.Least;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Policy;
import org.tidemark.model.Seen;
import org.tidemark.print.Cards;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.oracle.Agreement;
import org.tidemark.trial.Trial;
import org.tidemark.trial.WorkedCase;
import org.tidemark.yaml.YamlReader;

/**
 * An invented hospital that is looser than its floor in one thing or another: refused when it does
 * not say so, and shown wherever it answers when it does.
 */
class DeparturesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String WIDER = "    is: 6.0";
  private static final String BY =
      "why: Agreed for this test., approved-by: Nutrition steering group, until: 2027-09-01";
  private static final String CUT_OFF = "  - {value: ph-cut-off, " + BY + "}\n";
  private static final String WRONG_PLACE = "  - {rule: breathing-trouble-stops, " + BY + "}\n";

  private static String text(String departures) {
    String text = Shipped.text(Shipped.HOSPITAL + "/policy.yaml");
    return text.replace("\ncalls:\n", "\ndeparts-from-floor:\n" + departures + "\ncalls:\n");
  }

  private static Loaded<EffectivePolicy> read(String text) {
    Policy floor = Shipped.floor();
    PolicyLoader loader = new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography());
    Policy top =
        Shipped.sound(
            loader.load(
                Shipped.sound(new YamlReader().read(SourceText.of("policy.yaml", text))),
                List.of(floor)));
    return Layering.combine(Shipped.words().vocabulary(), List.of(floor, top));
  }

  private static EffectivePolicy wider() {
    return Shipped.sound(read(text(CUT_OFF).replace("    is: 5.0", WIDER)));
  }

  private static List<Proof> prove(EffectivePolicy policy) {
    return new Prover().prove(policy, policy.heldAgainst());
  }

  private static List<String> looserThanFloor(EffectivePolicy policy) {
    return prove(policy).stream()
        .filter(p -> p.claim().kind() == Claim.Kind.NEVER_LOOSER_THAN_FLOOR)
        .map(p -> p.claim().question() + " " + p.verdict().getClass().getSimpleName())
        .toList();
  }

  @Test
  void aWiderLimitIsRefusedUnlessItIsDeclared() {
    Loaded<EffectivePolicy> silent =
        read(Shipped.text(Shipped.HOSPITAL + "/policy.yaml").replace("    is: 5.0", WIDER));
    List<Diagnostic> said = silent.diagnostics();
    assertTrue(
        said.stream()
            .anyMatch(
                d ->
                    d.message().startsWith("`ph-cut-off` is 6 here and 5.5 in the layer below")
                        && d.help()
                            .orElse("")
                            .endsWith("or declare it under `departs-from-floor`")),
        said::toString);
    EffectivePolicy declared = wider();
    assertEquals(
        List.of(
            "Departs from its floor: `ph-cut-off` is 6 here and 5.5 in the layer below, where only"
                + " lower is stricter. Approved by Nutrition steering group, until 1 September"
                + " 2027."),
        declared.departed().stream().map(Departed::sentence).toList());
  }

  @Test
  void everyAnswerShowsIt() {
    Decider use = Decider.of(wider(), "use").orElseThrow();
    Decision nothing = use.decide(Findings.NONE, TODAY);
    assertEquals(
        "Departs from its floor: `ph-cut-off` is 6 here and 5.5 in the layer below, where only lower"
            + " is stricter. Approved by Nutrition steering group, until 1 September 2027. Why:"
            + " Agreed for this test.",
        nothing.cautions().get(0));
    Decision later = use.decide(Findings.NONE, LocalDate.of(2027, 9, 2));
    assertTrue(
        later.cautions().get(0).endsWith("!! It has ended. Do not rely on it."),
        later.cautions()::toString);
    Decision lastDay = use.decide(Findings.NONE, LocalDate.of(2027, 9, 1));
    assertEquals(nothing.cautions().get(0), lastDay.cautions().get(0));
  }

  /** A reading that only the departure lets pass, and one that the floor would let pass too. */
  @ParameterizedTest
  @ValueSource(strings = {"6.0", "3.0"})
  void afterItsLastDayNothingProceeds(String ph) {
    EffectivePolicy policy = wider();
    Decider use = Decider.of(policy, "use").orElseThrow();
    WorkedCase settled =
        Shipped.cases(Shipped.HOSPITAL).cases().stream()
            .filter(c -> c.name().equals("B-doubt-settled"))
            .findFirst()
            .orElseThrow();
    Findings findings =
        new Trial(policy, Shipped.words().usual())
            .findings(settled)
            .with("ph", new Findings.Entry(Seen.number(new BigDecimal(ph)), settled.place()))
            .with("ph-readers", new Findings.Entry(Seen.option("two-agree"), settled.place()));
    Decision lastDay = use.decide(findings, LocalDate.of(2027, 9, 1));
    assertEquals(Outcome.PROCEED, lastDay.outcome(), lastDay::toString);
    LocalDate after = LocalDate.of(2027, 9, 2);
    Decision late = use.decide(findings, after);
    assertEquals(Outcome.HOLD, late.outcome());
    assertEquals("Do not feed", late.word());
    assertEquals(Kind.HELD, late.kind());
    assertEquals(Set.of(Outcome.HOLD), late.possible());
    assertEquals("departure-ended", late.reasons().get(0).rule());
    assertEquals(
        Optional.of("The departure in the value `ph-cut-off` ended on 1 September 2027."),
        late.reasons().get(0).because());
    assertEquals(
        "Ask for the policy without it, or a new approval: Nutrition steering group.",
        late.next().get(0));
    Grounds grounds = use.grounds(findings, late, after);
    assertEquals(Optional.empty(), grounds.forcedBy());
    assertEquals(Optional.of(new Least.NoneExists()), grounds.wouldProceed());
  }

  /** What still escalates escalates, and what is open is not asked for the sake of proceeding. */
  @Test
  void afterItsLastDayAnEscalationStaysAndNoWayToProceedIsTold() {
    Decider use = Decider.of(wider(), "use").orElseThrow();
    LocalDate after = LocalDate.of(2027, 9, 2);
    Findings blue = Findings.NONE.with("colour", new Findings.Entry(Seen.option("blue"), NOWHERE));
    Decision escalates = use.decide(blue, after);
    assertEquals(Set.of(Outcome.ESCALATE), escalates.possible(), escalates::toString);
    assertEquals(Kind.ESCALATES, escalates.kind());
    Decision open = use.decide(Findings.NONE, after);
    assertEquals(Set.of(Outcome.HOLD, Outcome.ESCALATE), open.possible());
    assertEquals(Kind.UNSETTLED, open.kind());
    assertTrue(
        use.routes(Findings.NONE, after).ways().stream()
            .noneMatch(w -> w.outcome() == Outcome.PROCEED));
  }

  /** The checklist has no line to spare; with the note, one of its sentences must be shorter. */
  @Test
  void everyCardShowsItAndNoneIsPrintedAfterItsEnd() {
    String shorter =
        text(CUT_OFF)
            .replace("    is: 5.0", WIDER)
            .replace(", and write on the request that it is for the tube.", ".")
            .replace(" until the X-ray is read and the result is written]", "]")
            .replaceFirst("hours: \\{days.*\\}, else: site-lead", "when: Always")
            .replace("If nothing comes, ask for an X-ray that shows the tip", "Ask for an X-ray");
    Cards now = new Cards(Shipped.sound(read(shorter)), DeparturesTest::file, TODAY);
    assertEquals(
        List.of(DiagnosticCode.CARD_TOO_LONG),
        new Cards(wider(), DeparturesTest::file, TODAY)
            .page("before-first-use").diagnostics().stream().map(Diagnostic::code).toList());
    for (String name : now.names()) {
      String html = now.page(name).match(page -> page.html(), broken -> broken.toString());
      assertTrue(html.replace("&nbsp;", " ").contains("Use until 1 Sep 2027."), name + html);
      assertTrue(
          html.replace("&nbsp;", " ").contains("Looser than its floor in: ph cut off."),
          name + html);
    }
    Cards late = new Cards(wider(), DeparturesTest::file, LocalDate.of(2027, 9, 2));
    assertEquals(
        List.of("the departure in the value `ph-cut-off` ended on 1 Sep 2027"),
        late.page("before-first-use").diagnostics().stream().map(Diagnostic::message).toList());
  }

  private static Loaded<SourceText> file(String name) {
    return Loaded.good(SourceText.of(name, Shipped.text("content/cards/" + name)));
  }

  /** Where it departs it says so, and everywhere else it is still proved no looser. */
  @Test
  void whatIsDeclaredIsLeftOutOfTheProofAndNothingElseIs() {
    EffectivePolicy policy = wider();
    assertEquals(List.of("pass Proved", "use Proved"), looserThanFloor(policy));
    assertEquals(
        List.of("value lowest-pass", "value check-every"),
        prove(policy).stream()
            .flatMap(p -> p.claim().subject().stream())
            .filter(s -> s.startsWith("value "))
            .toList(),
        "the floor's own numbers, without the one that is declared to depart");
    assertTrue(
        prove(policy).stream()
            .anyMatch(
                p ->
                    p.claim()
                        .sentence()
                        .equals(
                            "No answer to `use` is less cautious than the answer of"
                                + " `floor-england-adult`, but for what is declared as a departure.")));
    EffectivePolicy plainFloor = policy.below().orElseThrow();
    assertTrue(
        new Prover()
            .prove(policy, java.util.Optional.of(plainFloor)).stream()
                .anyMatch(
                    p ->
                        p.claim().kind() == Claim.Kind.NEVER_LOOSER_THAN_FLOOR
                            && !p.verdict().proved()),
        "held against the floor itself it is looser");
    assertEquals(
        "", new Agreement().compare(policy, policy.heldAgainst(), prove(policy)).disagreements());
  }

  /** A floor's rule that does not apply: what it held proceeds or not as the rest says. */
  @Test
  void aRuleThatIsLeftOutIsGoneFromTheAnswersAndNamed() {
    EffectivePolicy policy = Shipped.sound(read(text(WRONG_PLACE)));
    assertTrue(policy.question("use").orElseThrow().rule("breathing-trouble-stops").isEmpty());
    assertEquals(
        List.of("the rule `breathing-trouble-stops` of the layer below does not apply"),
        policy.departed().stream().map(Departed::what).toList());
    assertEquals(List.of("pass Proved", "use Proved"), looserThanFloor(policy));
  }

  /** A further way to proceed, on a test that must not count: both are declared, or refused. */
  @Test
  void aBarredTestCountsOnlyWhereItIsDeclaredToAndTheFloorsClaimIsHeldElsewhere() {
    String rule =
        "    rules:\n      - rule: heard-and-marked\n        effect: allow\n        about: position\n"
            + "        given: {tube-state: in, occasion: later-use, air-listening: heard,"
            + " mark-at-nose: same}\n        because: It was agreed.\n";
    String text =
        text("")
            .replace("\ndeparts-from-floor:\n", "\n")
            .replace("\n  use:\n    rules:\n", "\n  use:\n" + rule);
    List<String> refused = read(text).diagnostics().stream().map(d -> d.code().id()).toList();
    assertEquals(List.of("looser-than-floor"), refused);
    String both =
        "\ndeparts-from-floor:\n  - {rule: heard-and-marked, "
            + BY
            + "}\n  - {test: air-listening, rule: heard-and-marked, "
            + BY
            + "}\n\ncalls:\n";
    EffectivePolicy policy = Shipped.sound(read(text.replace("\ncalls:\n", both)));
    Findings heard =
        new Findings(Map.of("air-listening", new Findings.Entry(Seen.option("heard"), NOWHERE)));
    Decision decision = Decider.of(policy, "use").orElseThrow().decide(heard, TODAY);
    assertTrue(decision.possible().contains(Outcome.PROCEED), decision::toString);
    assertEquals(List.of(), decision.doesNotCount());
    assertTrue(
        decision.cautions().stream()
            .anyMatch(c -> c.startsWith("Departs from what counts: `heard-and-marked` allows on")),
        decision.cautions()::toString);
    assertEquals(List.of("pass Proved", "use Proved"), looserThanFloor(policy));
  }

  private static final Place NOWHERE = Place.at(SourceText.of("departures", "case").beginning());
}
