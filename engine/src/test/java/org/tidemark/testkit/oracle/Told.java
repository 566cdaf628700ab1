package org.tidemark.testkit.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;

/**
 * A question told to a solver: when each rule fires, and from that what is answered.
 *
 * @param <B> a formula of the solver
 */
final class Told<B> {
  private final Logic<B> logic;
  private final List<Spoken> rules;
  private final Map<String, B> fires = new LinkedHashMap<>();

  Told(Logic<B> logic, EffectivePolicy policy, List<Spoken> rules) {
    this.logic = logic;
    this.rules = List.copyOf(rules);
    ConditionTeller<B> teller = new ConditionTeller<>(logic, policy);
    rules.forEach(r -> fires.put(r.name(), r.given().accept(teller).yes()));
  }

  private Told(Told<B> whole, Predicate<Spoken> kept) {
    this.logic = whole.logic;
    this.rules = whole.rules.stream().filter(kept).toList();
    this.fires.putAll(whole.fires);
  }

  List<Spoken> rules() {
    return rules;
  }

  /** The same question with some of its rules. */
  Told<B> only(Predicate<Spoken> kept) {
    return new Told<>(this, kept);
  }

  B fires(String rule) {
    return Optional.ofNullable(fires.get(rule)).orElseThrow();
  }

  private B some(Predicate<Spoken> of) {
    return logic.any(rules.stream().filter(of).map(r -> fires(r.name())).toList());
  }

  private B some(Effect effect) {
    return some(r -> r.effect() == effect);
  }

  /** No rule has anything to say. */
  B silent() {
    return logic.not(some(r -> true));
  }

  /** The allow rule fires and nothing sets it aside. */
  B hasForce(String allow) {
    return logic.all(
        List.of(
            fires(allow),
            logic.not(some(r -> r.effect() == Effect.SET_ASIDE && r.which().contains(allow)))));
  }

  private B someHasForce() {
    return logic.any(
        rules.stream()
            .filter(r -> r.effect() == Effect.ALLOW)
            .map(r -> hasForce(r.name()))
            .toList());
  }

  /** Nothing escalates, nothing holds and nothing allows. */
  B nothingStopsOrAllows() {
    return logic.not(logic.any(List.of(some(Effect.ESCALATE), some(Effect.HOLD), someHasForce())));
  }

  B is(Outcome outcome) {
    B escalates = some(Effect.ESCALATE);
    B held = some(Effect.HOLD);
    B allowed = someHasForce();
    return switch (outcome) {
      case ESCALATE -> escalates;
      case PROCEED -> logic.all(List.of(allowed, logic.not(logic.any(List.of(escalates, held)))));
      case HOLD ->
          logic.all(List.of(logic.not(escalates), logic.any(List.of(held, logic.not(allowed)))));
    };
  }

  /** What every case obeys: a finding exists exactly when what it hangs on is so. */
  static <B> B laws(Logic<B> logic, EffectivePolicy policy, Set<String> names) {
    List<B> laws = new ArrayList<>();
    for (String name : names) {
      Finding finding = policy.vocabulary().require(name);
      B open =
          logic.all(
              finding.applies().stream().map(p -> logic.word(p.finding(), p.options())).toList());
      B shut =
          finding
              .whenClosed()
              .map(c -> logic.word(name, List.of(c)))
              .orElseGet(() -> logic.absent(name));
      laws.add(logic.any(List.of(open, shut)));
      laws.add(logic.not(logic.all(List.of(open, logic.absent(name)))));
    }
    return logic.all(laws);
  }
}
