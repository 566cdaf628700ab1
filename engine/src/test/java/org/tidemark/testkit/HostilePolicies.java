package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Rule;
import org.tidemark.model.Worse;

/**
 * Policies that no hospital would write: as many stops as make it hardest to tell whether any case
 * slips through, each on three findings. Random clauses of three are hardest at a certain number of
 * them for each finding (Mitchell, Selman, Levesque, 'Hard and easy distributions of SAT problems',
 * AAAI 1992); for these domains it was found by trying.
 */
public final class HostilePolicies {
  private static final List<String> OPTIONS = List.of("a", "b", "c");

  private final Random random;
  private final int findings;

  private HostilePolicies(long seed, int findings) {
    this.random = new Random(seed);
    this.findings = findings;
  }

  /** A policy with so many stops for every ten findings; the same seed gives the same policy. */
  public static EffectivePolicy policy(long seed, int findings, int stopsForTen) {
    return new HostilePolicies(seed, findings).make(findings * stopsForTen / 10);
  }

  private EffectivePolicy make(int stops) {
    List<Finding> all =
        IntStream.range(0, findings)
            .mapToObj(
                i ->
                    PlainPolicies.finding(
                        i, PlainPolicies.choice(OPTIONS), new Worse.Neither(), List.of()))
            .toList();
    List<Rule> rules = new ArrayList<>();
    rules.add(
        PlainPolicies.rule(
            "allow",
            Effect.ALLOW,
            List.of(new Condition.Options("f0", Set.copyOf(OPTIONS.subList(0, 2)))),
            Set.of()));
    for (int i = 0; i < stops; i++) {
      rules.add(PlainPolicies.rule("stop-" + i, Effect.HOLD, three(), Set.of()));
    }
    return PlainPolicies.policy(all, rules);
  }

  private List<Condition> three() {
    return random
        .ints(0, findings)
        .distinct()
        .limit(3)
        .mapToObj(f -> (Condition) new Condition.Options("f" + f, some()))
        .toList();
  }

  private Set<String> some() {
    int leftOut = random.nextInt(3);
    return random.nextBoolean()
        ? Set.of(OPTIONS.get(leftOut))
        : Set.of(OPTIONS.get(leftOut), OPTIONS.get((leftOut + 1) % 3));
  }
}
