package org.tidemark.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.decide.Reason;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Rule;
import org.tidemark.source.Place;

/**
 * What of a policy its worked cases reach, counted and never as a share: one rule that no case
 * reaches must not vanish in a percentage.
 *
 * @param rules every rule that can fire: those written, steps to fall back on, limits of the scope
 * @param readings every reading at a limit and one step to either side of it
 */
public record Coverage(List<RuleCover> rules, List<ReadingCover> readings) {
  public Coverage {
    rules = List.copyOf(rules);
    readings = List.copyOf(readings);
  }

  /**
   * A rule, and whether some case makes it fire for certain, whatever that case leaves unknown.
   *
   * @param question the question's name; for a limit of the scope, one of those that it bears on
   * @param rule the rule's name
   * @param covered whether some case does
   * @param place where it is written
   */
  public record RuleCover(String question, String rule, boolean covered, Place place) {}

  /**
   * A reading at a limit or one step beside it, and whether some case of a question that looks at
   * the finding states exactly this reading. What a case leaves to its rest does not count: a limit
   * is tried on purpose or not at all.
   *
   * @param question the question's name
   * @param finding the measure's name
   * @param reading the reading, with the decimals of its step
   * @param limits what compares the measure with a number here, such as {@code band `pass-band`}
   * @param covered whether some case does
   * @param place where the first of these is written
   */
  public record ReadingCover(
      String question,
      String finding,
      String reading,
      List<String> limits,
      boolean covered,
      Place place) {
    public ReadingCover {
      limits = List.copyOf(limits);
    }
  }

  static Coverage of(
      EffectivePolicy policy, Collection<CompiledQuestion> questions, List<TrialResult> results) {
    Map<String, RuleCover> rules = new LinkedHashMap<>();
    List<ReadingCover> readings = new ArrayList<>();
    for (CompiledQuestion compiled : questions) {
      String question = compiled.question().name();
      List<TrialResult> mine =
          results.stream().filter(r -> r.worked().question().equals(question)).toList();
      rules(compiled, mine).forEach(r -> rules.merge(key(r), r, Coverage::either));
      readings.addAll(new Limits(compiled).readings(mine));
    }
    return new Coverage(rules.values().stream().map(r -> inItsPlace(r, policy)).toList(), readings);
  }

  /** A policy has one scope; whichever question shows a line of it will do. */
  private static String key(RuleCover rule) {
    return isScope(rule) ? rule.rule() : rule.question() + ":" + rule.rule();
  }

  private static boolean isScope(RuleCover rule) {
    return rule.rule().startsWith(CompiledRule.OUTSIDE_SCOPE);
  }

  private static RuleCover either(RuleCover one, RuleCover other) {
    return one.covered() ? one : other;
  }

  private static RuleCover inItsPlace(RuleCover rule, EffectivePolicy policy) {
    return isScope(rule)
        ? new RuleCover(
            rule.question(), rule.rule(), rule.covered(), policy.header().scope().place())
        : rule;
  }

  /** A rule that can never fire, as something it needs is not stated, has nothing to be reached. */
  private static List<RuleCover> rules(CompiledQuestion compiled, List<TrialResult> results) {
    Set<String> fired = new HashSet<>();
    results.forEach(r -> r.decision().reasons().stream().map(Reason::rule).forEach(fired::add));
    return compiled.rules().stream()
        .filter(r -> !r.isSilence() && !r.boxes().isEmpty())
        .map(CompiledRule::rule)
        .filter(r -> isItsOwn(r, compiled))
        .map(
            r ->
                new RuleCover(
                    compiled.question().name(), r.name(), fired.contains(r.name()), r.place()))
        .toList();
  }

  /** What a question takes from the one that it comes after has its cases there. */
  private static boolean isItsOwn(Rule rule, CompiledQuestion compiled) {
    EffectivePolicy policy = compiled.policy();
    EffectiveQuestion question = compiled.question();
    boolean steps =
        question.after().isPresent()
            && policy.care().fallbacks().stream().anyMatch(f -> f.name().equals(rule.name()));
    return !steps && !policy.isBorrowed(question, rule.name());
  }

  public int rulesCovered() {
    return Math.toIntExact(rules.stream().filter(RuleCover::covered).count());
  }

  public int readingsCovered() {
    return Math.toIntExact(readings.stream().filter(ReadingCover::covered).count());
  }

  public List<RuleCover> uncoveredRules() {
    return rules.stream().filter(r -> !r.covered()).toList();
  }

  public List<ReadingCover> uncoveredReadings() {
    return readings.stream().filter(r -> !r.covered()).toList();
  }

  /** Whether nothing is left that no case reaches. */
  public boolean complete() {
    return uncoveredRules().isEmpty() && uncoveredReadings().isEmpty();
  }
}
