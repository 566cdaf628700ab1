package org.tidemark.testkit.oracle;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Outcome;
import org.tidemark.model.Statement;

/**
 * Decides some claims about one question with decision diagrams: that no case is left without a
 * rule, that no answer is looser than the floor's, and what the policy says is always or never so.
 */
final class BddOracle {
  private final EffectivePolicy policy;
  private final BddLogic logic;
  private final int possible;
  private final Told<Integer> told;
  private final Optional<Told<Integer>> below;

  BddOracle(EffectivePolicy policy, Optional<EffectivePolicy> floor, EffectiveQuestion question) {
    this.policy = policy;
    List<Spoken> mine = Spoken.of(policy, question);
    Set<String> names = new LinkedHashSet<>();
    Set<String> mentioned = mentions(policy, mine);
    Optional<List<Spoken>> others =
        floor.flatMap(f -> f.question(question.name()).map(q -> Spoken.of(f, q)));
    others.ifPresent(o -> mentioned.addAll(mentions(floor.orElseThrow(), o)));
    mentioned.addAll(Mentions.of(policy, policy.statements().stream().map(Statement::given)));
    policy.vocabulary().names().stream().filter(mentioned::contains).forEach(names::add);
    this.logic = new BddLogic(policy.vocabulary(), names);
    this.possible = logic.all(List.of(logic.domains(), Told.laws(logic, policy, names)));
    this.told = new Told<>(logic, policy, mine);
    this.below = others.map(o -> new Told<>(logic, floor.orElseThrow(), o));
  }

  private static Set<String> mentions(EffectivePolicy policy, List<Spoken> rules) {
    return Mentions.of(policy, rules.stream().map(Spoken::given));
  }

  private boolean never(List<Integer> formulas) {
    return !logic.canBe(logic.all(List.of(possible, logic.all(formulas))));
  }

  /** Some case is as the statement says, and none of those is answered otherwise. */
  boolean holds(Statement statement) {
    int given = statement.given().accept(new ConditionTeller<>(logic, policy)).yes();
    List<Integer> belied = Stated.rulesOut(statement).stream().map(told::is).toList();
    return !never(List.of(given)) && never(List.of(given, logic.any(belied)));
  }

  boolean noGap() {
    return never(List.of(told.silent()));
  }

  /** What the floor leaves to the hospital is no answer of its own. */
  Optional<Boolean> neverLooserThanFloor() {
    return below.map(
        all -> {
          Told<Integer> floor = all.only(r -> !r.silence());
          return never(List.of(told.is(Outcome.PROCEED), logic.not(floor.is(Outcome.PROCEED))))
              && never(List.of(floor.is(Outcome.ESCALATE), logic.not(told.is(Outcome.ESCALATE))));
        });
  }
}
