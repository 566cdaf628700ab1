package org.tidemark.policies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Kind;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.UsualAnswers;
import org.tidemark.testkit.ShapedPolicies;

/**
 * Unfinished cases: what they come to and what is still needed. Each case is asked several times
 * and its quickest answer counts, so that a pause of the machine is not taken for a slow case.
 */
final class Unfinished {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final int CASES = 180;
  private static final int TIMES = 10;

  private Unfinished() {}

  static void measure() {
    Measure.line("policy                             median      worst");
    EffectivePolicy hospital = Shipped.policy(Shipped.HOSPITAL);
    line("the largest shipped policy", hospital, Shipped.words().usual());
    EffectivePolicy large = ShapedPolicies.policy(1, 80, 400);
    line("400 rules over 80 findings", large, Decisions.usual(large));
  }

  private static void line(String name, EffectivePolicy policy, UsualAnswers usual) {
    Decider decider = Decider.of(policy, policy.questions().get(0).name()).orElseThrow();
    List<Findings> cases = cases(policy, usual);
    for (int i = 0; i < 3; i++) {
      cases.forEach(c -> quickest(decider, c));
    }
    double[] quickest = cases.stream().mapToDouble(c -> quickest(decider, c)).sorted().toArray();
    Measure.line(
        "%-32s  %9s  %9s",
        name,
        Timed.words(quickest[quickest.length / 2]),
        Timed.words(quickest[quickest.length - 1]));
  }

  private static double quickest(Decider decider, Findings findings) {
    double[] micros = new double[TIMES];
    for (int i = 0; i < TIMES; i++) {
      long from = System.nanoTime();
      Decision decision = decider.decide(findings, TODAY);
      micros[i] = (System.nanoTime() - from) / 1_000.0;
      if (decision.kind() == Kind.UNDECIDED) {
        throw new IllegalStateException("undecided: " + findings);
      }
    }
    return Arrays.stream(micros).min().orElseThrow();
  }

  /** From nothing known to nearly everything known. */
  private static List<Findings> cases(EffectivePolicy policy, UsualAnswers usual) {
    KnownCases drawn = new KnownCases(policy.vocabulary(), usual, 3, 9);
    Random random = new Random(4);
    List<Findings> cases = new ArrayList<>();
    for (int i = 0; i < CASES; i++) {
      Map<String, Findings.Entry> some = new LinkedHashMap<>();
      int known = 10 * i / CASES;
      KnownCases.findings(drawn.draw(Findings.NONE))
          .entries()
          .forEach(
              (name, entry) -> {
                if (random.nextInt(10) < known) {
                  some.put(name, entry);
                }
              });
      cases.add(new Findings(some));
    }
    return cases;
  }
}
