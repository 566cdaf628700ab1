package org.tidemark.print;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;

/**
 * When a good pH is not enough: the rules that take its force from it, each by its name, so that a
 * card is never looser than the policy and a rule that is added is on the next card by itself.
 */
final class NotEnough {
  private final EffectivePolicy policy;

  NotEnough(EffectivePolicy policy) {
    this.policy = policy;
  }

  /** One sentence, or none when the policy has no such rule. */
  List<String> lines() {
    String reasons =
        policy.question("use").stream()
            .flatMap(use -> against(use).stream())
            .map(rule -> rule.name().replace('-', ' '))
            .collect(Collectors.joining("; "));
    return reasons.isEmpty() ? List.of() : List.of("pH is not enough: " + reasons + ".");
  }

  private static List<Rule> against(EffectiveQuestion use) {
    Set<String> restOnPh =
        use.rules(Effect.ALLOW).stream()
            .filter(rule -> namesPh(rule.given()))
            .map(Rule::name)
            .collect(Collectors.toSet());
    return use.rules(Effect.SET_ASIDE).stream()
        .filter(rule -> rule.which().stream().anyMatch(restOnPh::contains))
        .toList();
  }

  private static boolean namesPh(Condition given) {
    if (given instanceof Condition.AllOf all) {
      return all.parts().stream().anyMatch(NotEnough::namesPh);
    }
    if (given instanceof Condition.AnyOf any) {
      return any.alternatives().stream().anyMatch(NotEnough::namesPh);
    }
    if (given instanceof Condition.SomeOf some) {
      return some.parts().stream().anyMatch(NotEnough::namesPh);
    }
    return (given instanceof Condition.InNamedBand named && named.finding().equals("ph"))
        || (given instanceof Condition.InBand in && in.finding().equals("ph"));
  }
}
