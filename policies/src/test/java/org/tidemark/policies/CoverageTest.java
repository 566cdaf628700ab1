package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.SourceText;
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.CasesLoader;
import org.tidemark.trial.Coverage;
import org.tidemark.trial.Explanation;
import org.tidemark.trial.Trial;
import org.tidemark.trial.TrialReport;
import org.tidemark.trial.TrialResult;
import org.tidemark.trial.WorkedCase;
import org.tidemark.yaml.YamlReader;

/** What the worked cases of a policy reach, and that what they state is checked. */
class CoverageTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private static Trial trial(String folder) {
    return Trial.of(Shipped.policy(folder), Shipped.words());
  }

  private static TrialReport report(String folder, CaseFile cases) {
    return Shipped.sound(trial(folder).report(cases, TODAY, (done, of) -> {}));
  }

  private static TrialReport report(String folder) {
    return report(folder, Shipped.cases(folder));
  }

  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL})
  void theCasesOfAShippedPolicyPassAndReachAllOfIt(String folder) {
    TrialReport report = report(folder);
    assertEquals(List.of(), report.failures());
    assertEquals(List.of(), report.coverage().uncoveredRules());
    assertEquals(List.of(), report.coverage().uncoveredReadings());
    assertEquals(report.coverage().rules().size(), report.coverage().rulesCovered());
    assertEquals(report.coverage().readings().size(), report.coverage().readingsCovered());
  }

  /** The readings near a limit, worked out by hand from the two policies. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "policies/floor-england-adult   | use ph   | 0.5 1.0 1.5 5.0 5.5 6.0",
        "policies/floor-england-adult   | use hours-since-check | 23.5 24.0 24.5",
        "policies/example-general-adult | use ph   | 0.5 1.0 1.5 3.5 4.0 4.5 5.0 5.5",
        "policies/example-general-adult | use hours-since-check | 11.5 12.0 12.5",
        "policies/example-general-adult | use depth-against-measure | -1 0 1",
        "policies/example-general-adult | pass attempts | 2 3 4",
        "policies/example-general-adult | feed hours-hanging | 3.5 4.0 4.5 7.5 8.0 8.5 23.5 24.0 24.5",
        "policies/example-general-adult | feed head-angle | 29 30 31"
      })
  void theReadingsNearALimit(String folder, String of, String readings) {
    List<Coverage.ReadingCover> all = report(folder).coverage().readings();
    String found =
        all.stream()
            .filter(r -> (r.question() + " " + r.finding()).equals(of))
            .map(Coverage.ReadingCover::reading)
            .collect(Collectors.joining(" "));
    assertEquals(readings, found);
    int expected = folder.equals(Shipped.FLOOR) ? 9 : 29;
    assertEquals(expected, all.size(), "no other reading lies at a limit");
  }

  /** Every rule that the two policies write is counted, and nothing that nobody can make fire. */
  @Test
  void rulesAreCountedOnceEach() {
    List<String> names =
        report(Shipped.HOSPITAL).coverage().rules().stream().map(Coverage.RuleCover::rule).toList();
    Set<String> written = new TreeSet<>();
    Shipped.policy(Shipped.HOSPITAL)
        .questions()
        .forEach(q -> q.rules().forEach(r -> written.add(r.name())));
    assertTrue(names.containsAll(written), names::toString);
    List<String> implied = new ArrayList<>(names);
    implied.removeAll(written);
    assertEquals(
        Set.of(
            "fallback",
            "retest",
            "outside-scope:place:care-home+home+in-transfer",
            "outside-scope:place:critical-care",
            "outside-scope:population:child",
            "outside-scope:population:newborn",
            "outside-scope:tube-purpose:beyond-stomach"),
        Set.copyOf(implied));
    assertEquals(names.size(), Set.copyOf(names).size(), "each once");
  }

  /**
   * Take all cases away that state one reading, or make one rule fire: it is missed, with place.
   */
  @Test
  void whatNoCaseReachesIsListedWithItsPlace() {
    TrialReport less =
        report(Shipped.HOSPITAL, without("B-ph-3-5-one-reader", "B-at-home", "NG-109"));
    Coverage.ReadingCover reading = less.coverage().uncoveredReadings().get(0);
    assertEquals(1, less.coverage().uncoveredReadings().size());
    assertEquals(
        "use ph 3.5", reading.question() + " " + reading.finding() + " " + reading.reading());
    assertEquals(List.of("band `second-reader`", "rule `second-reader-needed`"), reading.limits());
    assertTrue(reading.place().span().text().startsWith("second-reader:"), reading::toString);
    Coverage.RuleCover rule = less.coverage().uncoveredRules().get(0);
    assertEquals(1, less.coverage().uncoveredRules().size());
    assertEquals("outside-scope:place:care-home+home+in-transfer", rule.rule());
    assertEquals("for", rule.place().span().text());
  }

  private static CaseFile without(String... names) {
    CaseFile all = Shipped.cases(Shipped.HOSPITAL);
    List<WorkedCase> left =
        all.cases().stream().filter(c -> !List.of(names).contains(c.name())).toList();
    assertEquals(all.cases().size() - names.length, left.size());
    return new CaseFile(all.of(), left);
  }

  private static CaseFile written(String of, String expects) {
    String text =
        "cases-of: "
            + of
            + "\ncases:\n  - case: one\n    kind: test\n    source: test\n"
            + "    question: use\n    rest: usual\n    findings: {population: adult, occasion:"
            + " later-use, aspirate: obtained, ph: 5.5}\n"
            + expects.indent(4);
    return Shipped.sound(
        new YamlReader()
            .read(
                SourceText.of("cases.yaml", text),
                root -> CasesLoader.load(root, Shipped.words().vocabulary())));
  }

  /** All that a case states is checked: the reading is one step above the hospital's limit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "expect: hold     ||",
        "expect: proceed  || expected proceed, and the answer is hold",
        "expect: hold     | expect-kind: not-yet |",
        "expect: hold     | expect-kind: held | expected held, and the answer is not-yet",
        "expect: hold     | rules: [retest] |",
        "expect: hold     | rules: [fallback] | the rule `fallback` does not fire; these do: [retest]",
        "expect: hold     | not-rules: [fallback] |",
        "expect: hold     | not-rules: [retest] | the rule `retest` fires, and must not",
        "expect: hold     | needs: [ph-readers] | `ph-readers` is not asked; these are: []",
        "expect: hold     | call: [nutrition-nurse, site-lead] |",
        "expect: hold     | call: [outreach] | `outreach` is not called; these are: [nutrition-nurse, site-lead]",
        "expect: hold     | next: After the first high reading, put nothing down the tube for 60 minutes. |"
      })
  void whatACaseStatesIsChecked(String expect, String more, String difference) {
    CaseFile file =
        written("example-general-adult", more == null ? expect : expect + "\n" + quoted(more));
    TrialResult result = report(Shipped.HOSPITAL, file).results().get(0);
    assertEquals(difference == null ? List.of() : List.of(difference), result.differences());
  }

  private static String quoted(String line) {
    return line.startsWith("next: ") ? "next: \"" + line.substring(6) + '"' : line;
  }

  @Test
  void aNextStepThatIsNotSaidIsShownBesideThoseThatAre() {
    CaseFile file = written("example-general-adult", "expect: hold\nnext: Do nothing.");
    String difference = report(Shipped.HOSPITAL, file).results().get(0).differences().get(0);
    assertTrue(
        difference.startsWith("this is not said: Do nothing. What is said: After the first high"),
        difference);
  }

  @Test
  void casesOfAnotherPolicyAreRefused() {
    CaseFile file = written("floor-england-adult", "expect: hold");
    String said = said(trial(Shipped.HOSPITAL).report(file, TODAY, (done, of) -> {}));
    assertTrue(
        said.startsWith(
            "cases.yaml:1:11: error: these are cases of `floor-england-adult`, and the policy is"
                + " `example-general-adult` [other-policy]"),
        said);
  }

  @Test
  void aRuleThatThePolicyDoesNotHaveIsASlipAndNoFailure() {
    CaseFile file = written("example-general-adult", "expect: hold\nnot-rules: [retset]");
    String said = said(trial(Shipped.HOSPITAL).run(file.cases(), TODAY));
    assertTrue(said.contains("no rule of the question `use` is called `retset`"), said);
    assertTrue(said.contains("did you mean `retest`?"), said);
  }

  private static String said(Loaded<?> loaded) {
    return loaded.match(
        good -> "it was taken",
        errors -> errors.stream().map(Diagnostic::render).collect(Collectors.joining("\n")));
  }

  @Test
  void progressCountsUpToTheLastCase() {
    List<String> heard = new ArrayList<>();
    CaseFile all = Shipped.cases(Shipped.FLOOR);
    CaseFile two =
        new CaseFile(Located.of(all.policy(), all.of().span()), all.cases().subList(0, 2));
    Shipped.sound(
        trial(Shipped.FLOOR).report(two, TODAY, (done, of) -> heard.add(done + "/" + of)));
    assertEquals(List.of("1/2", "2/2"), heard);
  }

  private static List<String> step(String folder, String name, String step) {
    WorkedCase worked = Shipped.cases(folder).named(name).orElseThrow();
    Explanation explanation = Shipped.sound(trial(folder).explain(worked, TODAY));
    return explanation.steps().stream()
        .filter(s -> s.name().equals(step))
        .findFirst()
        .orElseThrow()
        .lines();
  }

  @Test
  void anExplanationNamesWhatTakesTheForceFromWhat() {
    assertEquals(
        List.of("`acid-aspirate` does not count here: `in-the-airway-before` takes its force."),
        step(Shipped.HOSPITAL, "B-in-the-airway-before", "set-aside"));
    assertTrue(
        step(Shipped.HOSPITAL, "B-in-the-airway-before", "fires")
            .contains(
                "`in-the-airway-before`, about position: takes the force from `acid-aspirate`. A"
                    + " tube of this patient has been in the airway before."));
  }

  @Test
  void anExplanationTellsWhatIsStatedFromWhatIsTakenAsUsual() {
    List<String> entered = step(Shipped.HOSPITAL, "B-ph-3-5-one-reader", "entered");
    assertEquals("What did the strip read? 3.5 pH", entered.get(3));
    assertTrue(
        entered.contains(
            "Which strip was used? Made for stomach fluid, in date (not stated; taken as usual)"));
    assertTrue(
        entered.stream().noneMatch(line -> line.startsWith("Did anybody look for bubbles?")),
        "what no rule looks at is left out");
  }

  @Test
  void anExplanationSaysWhatDoesNotCountAndWhatIsOpen() {
    assertEquals(
        "Did anybody listen for air? Air was heard. Air in the lung or the gullet can sound the"
            + " same.",
        step(Shipped.HOSPITAL, "NG-005", "does-not-count").get(0));
    List<String> open = step(Shipped.HOSPITAL, "NG-217", "open");
    assertEquals("It could still become: Proceed, or Do not feed.", open.get(0));
    assertTrue(open.contains("Not known: Who has read this strip?"), open::toString);
  }
}
