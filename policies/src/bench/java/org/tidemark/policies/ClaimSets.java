package org.tidemark.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.testkit.ShapedPolicies;

/** The whole set of claims on policies of growing size, and how the time grows. */
final class ClaimSets {
  private ClaimSets() {}

  static void measure() {
    Measure.line("rules  findings  all claims   of them");
    List<double[]> points = new ArrayList<>();
    for (int rules : new int[] {25, 50, 100, 200, 400}) {
      for (int findings : new int[] {20, 40, 60, 80}) {
        EffectivePolicy policy = ShapedPolicies.policy(1, findings, rules);
        Timed timed = Timed.of(20, 9, () -> verdicts(policy));
        Measure.line("%5d  %8d  %10s   %s", rules, findings, timed.words(), timed.said());
        points.add(new double[] {rules, findings, timed.middle()});
      }
    }
    Fit fit = Fit.of(points);
    Measure.line("time grows as rules^%.2f x findings^%.2f", fit.first(), fit.second());
    shipped();
  }

  private static void shipped() {
    EffectivePolicy hospital = Shipped.policy(Shipped.HOSPITAL);
    EffectivePolicy floor = Shipped.policy(Shipped.FLOOR);
    Timed timed = Timed.of(10, 9, () -> verdicts(new Prover().prove(hospital, Optional.of(floor))));
    Measure.line("the largest shipped policy, with its floor: %s, %s", timed.words(), timed.said());
  }

  private static String verdicts(EffectivePolicy policy) {
    return verdicts(new Prover().prove(policy, Optional.empty()));
  }

  private static String verdicts(List<Proof> proofs) {
    TreeMap<String, Integer> many = new TreeMap<>();
    proofs.forEach(p -> many.merge(p.verdict().getClass().getSimpleName(), 1, Integer::sum));
    return many.toString();
  }
}
