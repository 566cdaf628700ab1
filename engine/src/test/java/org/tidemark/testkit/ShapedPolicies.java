package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Rule;
import org.tidemark.model.Worse;

/**
 * Policies of any size in the shape of the shipped ones: most findings are choices of two to four
 * options, one in five a number, one in six hangs on another; a few rules allow, on several
 * findings at once; most others stop on one to three findings, each time on something that is not
 * as it should be. So every policy can proceed, and every stop matters.
 */
public final class ShapedPolicies {
  private static final int NUMBERS = 20;

  private final Random random;
  private final List<Finding> findings = new ArrayList<>();

  private ShapedPolicies(long seed) {
    this.random = new Random(seed);
  }

  /** A policy of a size; the same seed gives the same policy. */
  public static EffectivePolicy policy(long seed, int findings, int rules) {
    return new ShapedPolicies(seed).make(findings, rules);
  }

  private EffectivePolicy make(int howManyFindings, int howManyRules) {
    for (int i = 0; i < howManyFindings; i++) {
      findings.add(finding(i));
    }
    List<Rule> rules = new ArrayList<>();
    for (int i = 0; i < howManyRules; i++) {
      rules.add(rule(i, howManyRules));
    }
    return PlainPolicies.policy(findings, rules);
  }

  private Finding finding(int i) {
    List<Finding> parents = findings.stream().filter(ShapedPolicies::isChoice).toList();
    boolean hangs = !parents.isEmpty() && random.nextInt(6) == 0;
    List<Condition.Options> applies =
        hangs ? List.of(fine(parents.get(random.nextInt(parents.size())))) : List.of();
    if (random.nextInt(5) == 0) {
      return PlainPolicies.finding(i, PlainPolicies.whole(NUMBERS), new Worse.Higher(), applies);
    }
    List<String> options =
        IntStream.rangeClosed(1, 2 + random.nextInt(3)).mapToObj(o -> "o" + o).toList();
    return PlainPolicies.finding(
        i, PlainPolicies.choice(options), new Worse.Ranked(options), applies);
  }

  private static boolean isChoice(Finding finding) {
    return finding.domain() instanceof Domain.Choice;
  }

  private static Condition.Options fine(Finding choice) {
    return new Condition.Options(choice.name(), Set.of("o1"));
  }

  private Rule rule(int i, int of) {
    int kind = i < Math.max(2, of / 40) ? 0 : 1 + random.nextInt(10);
    Effect effect =
        kind == 0
            ? Effect.ALLOW
            : kind <= 6 ? Effect.HOLD : kind <= 9 ? Effect.ESCALATE : Effect.NOT_YET;
    String name = effect.word() + "-" + i;
    return PlainPolicies.rule(
        name, effect, effect == Effect.ALLOW ? wellOn() : amissOn(), Set.of());
  }

  private List<Condition> wellOn() {
    return some(3 + random.nextInt(3)).stream().map(this::well).toList();
  }

  private Condition well(Finding finding) {
    return isChoice(finding)
        ? fine(finding)
        : PlainPolicies.between(finding.name(), 0, NUMBERS / 2);
  }

  private List<Condition> amissOn() {
    return some(1 + random.nextInt(3)).stream().map(this::amiss).toList();
  }

  private Condition amiss(Finding finding) {
    if (!isChoice(finding)) {
      return PlainPolicies.between(
          finding.name(), NUMBERS / 2 + 1 + random.nextInt(NUMBERS / 2 - 1), NUMBERS - 1);
    }
    int worst = finding.domain().options().size();
    int from = 2 + random.nextInt(worst - 1);
    return new Condition.Options(
        finding.name(),
        Set.copyOf(IntStream.rangeClosed(from, worst).mapToObj(o -> "o" + o).toList()));
  }

  private List<Finding> some(int howMany) {
    return random
        .ints(0, findings.size())
        .distinct()
        .limit(Math.min(howMany, findings.size()))
        .mapToObj(findings::get)
        .toList();
  }
}
