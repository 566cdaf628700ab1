package org.tidemark.policies;

import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Rule;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.testkit.PlainPolicies;
import org.tidemark.testkit.ShapedPolicies;
import org.tidemark.testkit.oracle.Z3Verdicts;

/**
 * The two questions of {@link Tables} about policies shaped like the shipped ones, true and broken,
 * against Z3: whether every case is spoken of, and whether a policy is nowhere looser than one that
 * has a rule less, or a rule more.
 */
final class Shaped {
  private Shaped() {}

  static void measure() {
    Measure.line("rules x findings  question                   here        Z3  times faster");
    for (int[] size : new int[][] {{25, 20}, {50, 40}, {100, 40}, {200, 60}, {400, 80}}) {
      EffectivePolicy whole = ShapedPolicies.policy(1, size[1], size[0]);
      List<Rule> rules = use(whole).rules();
      EffectivePolicy fewer =
          PlainPolicies.policy(
              whole.vocabulary().findings(), rules.subList(0, rules.size() - rules.size() / 10));
      String name = size[0] + " x " + size[1];
      line(name, "complete", whole, Optional.empty());
      line(name, "never looser", whole, Optional.of(fewer));
      line(name, "never looser, broken", fewer, Optional.of(whole));
    }
  }

  private static EffectiveQuestion use(EffectivePolicy policy) {
    return policy.question("use").orElseThrow();
  }

  private static void line(
      String name, String question, EffectivePolicy policy, Optional<EffectivePolicy> floor) {
    Timed us = Timed.of(400, 9, () -> here(policy, floor));
    Timed solver = Timed.of(4, 5, () -> solved(policy, floor));
    if (!us.said().equals(solver.said())) {
      throw new IllegalStateException(us.said() + ", and Z3 says " + solver.said());
    }
    Measure.line(
        "%-16s  %-28s %9s %9s  %12s  %s",
        name, question, us.words(), solver.words(), us.timesFasterThan(solver), us.said());
  }

  private static String here(EffectivePolicy policy, Optional<EffectivePolicy> floor) {
    Prover prover = new Prover();
    Proof proof =
        floor
            .map(f -> prover.neverLooser(policy, f, "use"))
            .orElseGet(() -> prover.noGap(policy, "use"));
    return proof.verdict().getClass().getSimpleName();
  }

  private static String solved(EffectivePolicy policy, Optional<EffectivePolicy> floor) {
    boolean holds =
        floor
            .map(f -> Z3Verdicts.neverLooser(policy, f, use(policy)))
            .orElseGet(() -> Z3Verdicts.complete(policy, use(policy)));
    return holds ? "Proved" : "Refuted";
  }
}
