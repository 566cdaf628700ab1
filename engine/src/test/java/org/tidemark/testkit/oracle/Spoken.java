package org.tidemark.testkit.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Axis;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Option;
import org.tidemark.model.Scope;

/**
 * Everything that speaks of a question: its rules, whom the policy is not for, what nobody has
 * spoken of, and the steps to fall back on.
 *
 * @param name the rule's name
 * @param effect what it does
 * @param given when
 * @param which the allow rules that it takes the force from
 * @param silence whether it only says that something is not spoken of
 */
record Spoken(String name, Effect effect, Condition given, Set<String> which, boolean silence) {

  static List<Spoken> of(EffectivePolicy policy, EffectiveQuestion question) {
    List<Spoken> all = new ArrayList<>();
    question
        .rules()
        .forEach(r -> all.add(new Spoken(r.name(), r.effect(), r.given(), r.which(), false)));
    outside(policy).forEach(o -> all.add(outside(o)));
    question.open().forEach(a -> all.add(silence(a)));
    if (question.speaksOf().contains(Axis.POSITION)) {
      policy
          .care()
          .fallbacks()
          .forEach(f -> all.add(new Spoken(f.name(), Effect.NOT_YET, f.after(), Set.of(), false)));
    }
    return List.copyOf(all);
  }

  private static List<Condition.Options> outside(EffectivePolicy policy) {
    List<Condition.Options> all = new ArrayList<>();
    Scope scope = policy.header().scope();
    List<Condition.Options> excluded =
        scope.excludes().stream().map(Scope.Exclusion::what).toList();
    for (Condition.Options covers : scope.covers()) {
      Set<String> rest = new TreeSet<>();
      policy.vocabulary().require(covers.finding()).domain().options().stream()
          .map(Option::name)
          .filter(o -> !covers.options().contains(o))
          .forEach(rest::add);
      excluded.stream()
          .filter(e -> e.finding().equals(covers.finding()))
          .forEach(e -> rest.removeAll(e.options()));
      if (!rest.isEmpty()) {
        all.add(new Condition.Options(covers.finding(), rest));
      }
    }
    all.addAll(excluded);
    return all;
  }

  private static Spoken outside(Condition.Options what) {
    String name = "outside-scope:" + what.finding() + ":" + String.join("+", what.options());
    return new Spoken(name, Effect.HOLD, what, Set.of(), false);
  }

  private static Spoken silence(Axis axis) {
    return new Spoken(
        "not-spoken-of:" + axis.word(),
        Effect.HOLD,
        new Condition.AllOf(List.of()),
        Set.of(),
        true);
  }
}
