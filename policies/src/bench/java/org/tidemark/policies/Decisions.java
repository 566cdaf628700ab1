package org.tidemark.policies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.decide.Decider;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.report.DmnExport;
import org.tidemark.testkit.ShapedPolicies;

/** Complete cases with their reasons, against KIE on the exported table with the same inputs. */
final class Decisions {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final int CASES = 200;

  private Decisions() {}

  static void measure() {
    Measure.line("rules  findings  a decision  KIE, outcome and rules  times faster");
    for (int rules : new int[] {50, 200}) {
      against(rules, ShapedPolicies.policy(1, 40, rules));
    }
  }

  private static void against(int rules, EffectivePolicy policy) {
    Decider decider = Decider.of(policy, "use").orElseThrow();
    Kie kie = Kie.of(DmnExport.of(policy, policy.questions()).xml(), false);
    KnownCases drawn = new KnownCases(policy.vocabulary(), usual(policy), 5, 9);
    List<Findings> ours = new ArrayList<>();
    List<Map<String, Object>> theirs = new ArrayList<>();
    for (int i = 0; i < CASES; i++) {
      Map<String, Value> known = drawn.draw(Findings.NONE);
      ours.add(KnownCases.findings(known));
      theirs.add(drawn.inputs(known));
    }
    Timed us = Timed.of(4_000, 50, () -> answers(decider, ours));
    Timed kies = Timed.of(30, 9, () -> answers(kie, theirs));
    if (!us.said().equals(kies.said())) {
      throw new IllegalStateException("not the same answers");
    }
    Measure.line(
        "%5d  %8d  %10s  %22s  %12s",
        rules,
        policy.vocabulary().findings().size(),
        Timed.words(us.middle() / CASES),
        Timed.words(kies.middle() / CASES),
        us.timesFasterThan(kies));
  }

  private static String answers(Decider decider, List<Findings> cases) {
    StringBuilder said = new StringBuilder();
    cases.forEach(c -> said.append(decider.decide(c, TODAY).outcome().word()).append(' '));
    return said.toString();
  }

  private static String answers(Kie kie, List<Map<String, Object>> cases) {
    StringBuilder said = new StringBuilder();
    cases.forEach(c -> said.append(kie.ask("use", c).outcome().orElseThrow()).append(' '));
    return said.toString();
  }

  /** What is as it should be: the first option, the lowest number. */
  static UsualAnswers usual(EffectivePolicy policy) {
    Map<String, Value> usual = new LinkedHashMap<>();
    for (Finding finding : policy.vocabulary().findings()) {
      usual.put(
          finding.name(),
          finding.domain() instanceof Domain.Measure measure
              ? new Value.Amount(measure.lowest())
              : Value.word(finding.domain().options().get(0).name()));
    }
    return new UsualAnswers(usual);
  }
}
