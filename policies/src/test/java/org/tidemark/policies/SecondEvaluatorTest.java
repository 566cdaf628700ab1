package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.report.DmnExport;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.trial.Trial;
import org.tidemark.trial.WorkedCase;

/**
 * The exported tables, evaluated by KIE 10.2.0 with every input known and its type checks on, give
 * the outcome, the kind and the fired rules that Tidemark gives.
 */
class SecondEvaluatorTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final UsualAnswers NOTHING_USUAL = new UsualAnswers(Map.of());
  private static final UsualAnswers USUAL = Shipped.words().usual();

  private final Map<String, Integer> seen = new TreeMap<>();
  private final List<String> differences = new ArrayList<>();
  private int compared;

  private static String export(EffectivePolicy policy) {
    return DmnExport.of(policy, policy.questions()).xml();
  }

  private Decision compare(
      Kie kie, Decider decider, String question, KnownCases drawn, Map<String, Value> known) {
    Decision ours = decider.decide(KnownCases.findings(known), TODAY);
    Kie.Said theirs = kie.ask(question, drawn.inputs(known));
    Set<String> fired = new TreeSet<>();
    ours.reasons().forEach(r -> fired.add(r.rule()));
    String expected = ours.outcome().word() + ", " + ours.kind().word() + " " + fired;
    String outcome = theirs.outcome().orElse("nothing");
    String said = outcome + ", " + theirs.kind().orElse("nothing") + " " + theirs.rules();
    compared++;
    seen.merge(ours.kind().word(), 1, Integer::sum);
    if (!said.equals(expected)) {
      differences.add(expected + ", and KIE says " + said + " of " + known);
    }
    return ours;
  }

  /** What a worked case leaves open is drawn, three times over. */
  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL, Shipped.PORTSMOUTH, Shipped.NORDJYLLAND})
  void everyWorkedCase(String folder) {
    EffectivePolicy policy = Shipped.policy(folder);
    String xml = export(policy);
    assertEquals(List.of(), Kie.validated(xml));
    Kie kie = Kie.of(xml, true);
    assertEquals(List.of(), kie.faults());
    Trial trial = new Trial(policy, USUAL);
    KnownCases drawn = new KnownCases(policy.vocabulary(), USUAL, 7, 7);
    List<WorkedCase> cases = Shipped.cases(folder).cases();
    for (WorkedCase worked : cases) {
      Decider decider = Decider.of(policy, worked.question()).orElseThrow();
      Findings findings = trial.findings(worked);
      boolean settled = decider.decide(findings, TODAY).settled();
      for (int i = 0; i < 3; i++) {
        Decision ours = compare(kie, decider, worked.question(), drawn, drawn.draw(findings));
        assertTrue(!settled || ours.outcome() == worked.expect(), worked.name());
      }
    }
    assertEquals(List.of(), differences);
    assertEquals(3 * cases.size(), compared);
  }

  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL, Shipped.PORTSMOUTH, Shipped.NORDJYLLAND})
  void drawnCasesOfTheShippedPolicies(String folder) {
    EffectivePolicy policy = Shipped.policy(folder);
    Kie kie = Kie.of(export(policy), true);
    KnownCases drawn = new KnownCases(policy.vocabulary(), USUAL, 11, 9);
    policy
        .questions()
        .forEach(
            q -> {
              Decider decider = Decider.of(policy, q.name()).orElseThrow();
              for (int i = 0; i < 1_000; i++) {
                compare(kie, decider, q.name(), drawn, drawn.draw(Findings.NONE));
              }
            });
    assertEquals(List.of(), differences);
    assertEquals(1_000 * policy.questions().size(), compared);
  }

  /** A hundred thousand cases of policies that nobody wrote. */
  @Test
  void drawnCasesOfGeneratedPolicies() {
    for (int seed = 0; seed < 50; seed++) {
      generated(GeneratedPolicies.policy(seed, 5, 7), seed);
      generated(GeneratedPolicies.twoTrimmed(seed, 6, 9).get(1), seed);
    }
    assertEquals(List.of(), differences);
    assertEquals(100_000, compared);
    assertEquals(Set.of("escalates", "held", "not-covered", "not-yet", "proceeds"), seen.keySet());
    assertTrue(seen.values().stream().allMatch(n -> n > 1_000), seen::toString);
  }

  private void generated(EffectivePolicy policy, long seed) {
    Kie kie = Kie.of(export(policy), true);
    Decider decider = Decider.of(policy, "use").orElseThrow();
    KnownCases drawn = new KnownCases(policy.vocabulary(), NOTHING_USUAL, seed, 0);
    for (int i = 0; i < 1_000; i++) {
      compare(kie, decider, "use", drawn, drawn.draw(Findings.NONE));
    }
  }

  /** Exports that are wrong on purpose; the comparison must notice each. */
  @ParameterizedTest
  @ValueSource(strings = {"set-aside", "hold", "escalate", "allow", "not-yet"})
  void anEffectThatDoesNotArriveIsNoticed(String effect) {
    EffectivePolicy policy = Shipped.policy(Shipped.HOSPITAL);
    String xml = export(policy);
    String lost =
        xml.replace("<outputEntry><text>\"" + effect + "\"<", "<outputEntry><text>\"lost\"<");
    Kie kie = Kie.of(lost, true);
    Trial trial = new Trial(policy, USUAL);
    KnownCases drawn = new KnownCases(policy.vocabulary(), USUAL, 7, 10);
    for (WorkedCase worked : Shipped.cases(Shipped.HOSPITAL).cases()) {
      Decider decider = Decider.of(policy, worked.question()).orElseThrow();
      compare(kie, decider, worked.question(), drawn, drawn.draw(trial.findings(worked)));
    }
    assertTrue(differences.size() > 3, effect + ": " + differences.size());
  }

  /**
   * In DMN a missing input passes every dash, and this engine, with type checks off, takes a value
   * out of range for a missing one. The guard lets neither proceed: it is a hold, or an error,
   * which is no answer at all.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void nothingMissingOrImpossibleProceeds(boolean typeChecks) {
    EffectivePolicy policy = Shipped.policy(Shipped.HOSPITAL);
    String xml = DmnExport.of(policy, List.of(policy.question("use").orElseThrow())).xml();
    Kie kie = Kie.of(xml, typeChecks);
    Map<String, Object> inputs = proceeds(policy);
    assertEquals("proceed", kie.ask("use", inputs).outcome().orElse("nothing"));
    Map<String, Integer> outcomes = new TreeMap<>();
    for (String input : inputs.keySet()) {
      for (Object wrong : new Object[] {"nonsense", new BigDecimal("999.25"), null}) {
        Map<String, Object> spoilt = new HashMap<>(inputs);
        spoilt.put(input, wrong);
        boolean looksAtIt = xml.contains("\"#input_" + input + "\"");
        if (looksAtIt && (wrong != null || inputs.get(input) != null)) {
          String outcome = kie.ask("use", spoilt).outcome().orElse("nothing");
          outcomes.merge(
              outcome.equals("proceed") ? input + " " + wrong : outcome, 1, Integer::sum);
        }
      }
    }
    assertEquals(Set.of("hold", "nothing"), outcomes.keySet());
    assertTrue(outcomes.getOrDefault(typeChecks ? "nothing" : "hold", 0) > 100, outcomes::toString);
  }

  /** The inputs of a worked case that proceeds. */
  private static Map<String, Object> proceeds(EffectivePolicy policy) {
    WorkedCase settled =
        Shipped.cases(Shipped.HOSPITAL).cases().stream()
            .filter(c -> c.name().equals("B-doubt-settled"))
            .findFirst()
            .orElseThrow();
    KnownCases drawn = new KnownCases(policy.vocabulary(), USUAL, 1, 10);
    return drawn.inputs(drawn.draw(new Trial(policy, USUAL).findings(settled)));
  }
}
