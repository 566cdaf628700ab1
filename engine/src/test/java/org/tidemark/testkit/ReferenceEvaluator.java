package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.model.Value;

/**
 * The slow, obvious reading of a policy, to compare the fast one with: one fully known case at a
 * time, each rule looked at in turn, no cells, no boxes, no search. A finding that is absent from
 * the case does not exist in it.
 */
public final class ReferenceEvaluator implements Condition.Visitor<Optional<Boolean>> {
  private final EffectivePolicy policy;
  private final Map<String, Value> known;

  private ReferenceEvaluator(EffectivePolicy policy, Map<String, Value> known) {
    this.policy = policy;
    this.known = known;
  }

  /** The rules that fire in a case. */
  public static Set<String> fired(
      EffectivePolicy policy, EffectiveQuestion question, Map<String, Value> known) {
    ReferenceEvaluator evaluator = new ReferenceEvaluator(policy, known);
    Set<String> names = new LinkedHashSet<>();
    question.rules().stream().filter(evaluator::holds).forEach(r -> names.add(r.name()));
    return names;
  }

  /** The outcome of a case, for a policy whose scope covers it and whose axes are all spoken of. */
  public static Outcome outcome(
      EffectivePolicy policy, EffectiveQuestion question, Map<String, Value> known) {
    Set<String> fired = fired(policy, question, known);
    List<Rule> rules = question.rules().stream().filter(r -> fired.contains(r.name())).toList();
    if (rules.stream().anyMatch(r -> r.effect() == Effect.ESCALATE)) {
      return Outcome.ESCALATE;
    }
    if (rules.stream().anyMatch(r -> r.effect() == Effect.HOLD)) {
      return Outcome.HOLD;
    }
    for (Rule rule : rules) {
      boolean setAside =
          rules.stream()
              .anyMatch(s -> s.effect() == Effect.SET_ASIDE && s.which().contains(rule.name()));
      if (rule.effect() == Effect.ALLOW && !setAside) {
        return Outcome.PROCEED;
      }
    }
    return Outcome.HOLD;
  }

  /** Whether a condition holds in a case. */
  public static boolean holds(
      EffectivePolicy policy, Condition condition, Map<String, Value> known) {
    return condition.accept(new ReferenceEvaluator(policy, known)).orElse(false);
  }

  private boolean holds(Rule rule) {
    return rule.given().accept(this).orElse(false);
  }

  /** Every fully known case there is, in asking order; for small vocabularies only. */
  public static List<Map<String, Value>> everyCase(EffectivePolicy policy) {
    List<Map<String, Value>> cases = new ArrayList<>();
    cases.add(new LinkedHashMap<>());
    for (Finding finding : policy.vocabulary().findings()) {
      List<Map<String, Value>> longer = new ArrayList<>();
      for (Map<String, Value> start : cases) {
        values(finding, start).forEach(v -> longer.add(with(start, finding.name(), v)));
        if (values(finding, start).isEmpty()) {
          longer.add(start);
        }
      }
      cases = longer;
    }
    return cases;
  }

  /** The values that a finding may have, given those before it; none if it does not exist then. */
  public static List<Value> values(Finding finding, Map<String, Value> before) {
    boolean applies =
        finding.applies().stream()
            .allMatch(
                p ->
                    before.get(p.finding()) instanceof Value.Word w
                        && p.options().contains(w.name()));
    if (!applies) {
      return finding.whenClosed().map(Value::word).map(List::of).orElse(List.of());
    }
    List<Value> values = new ArrayList<>();
    finding.domain().options().forEach(o -> values.add(Value.word(o.name())));
    if (finding.domain() instanceof Domain.Measure m) {
      for (BigDecimal n = m.lowest(); n.compareTo(m.highest()) <= 0; n = n.add(m.step())) {
        values.add(new Value.Amount(n));
      }
    }
    return values;
  }

  private static Map<String, Value> with(Map<String, Value> start, String name, Value value) {
    Map<String, Value> more = new LinkedHashMap<>(start);
    more.put(name, value);
    return more;
  }

  // A condition is true, false, or empty: not recorded or not applicable, which is neither.

  @Override
  public Optional<Boolean> allOf(Condition.AllOf all) {
    List<Optional<Boolean>> parts = all.parts().stream().map(p -> p.accept(this)).toList();
    if (parts.contains(Optional.of(false))) {
      return Optional.of(false);
    }
    return parts.contains(Optional.<Boolean>empty()) ? Optional.empty() : Optional.of(true);
  }

  @Override
  public Optional<Boolean> anyOf(Condition.AnyOf any) {
    return anyOf(any.alternatives());
  }

  private Optional<Boolean> anyOf(List<Condition> alternatives) {
    List<Optional<Boolean>> parts = alternatives.stream().map(p -> p.accept(this)).toList();
    if (parts.contains(Optional.of(true))) {
      return Optional.of(true);
    }
    return parts.contains(Optional.<Boolean>empty()) ? Optional.empty() : Optional.of(false);
  }

  @Override
  public Optional<Boolean> someOf(Condition.SomeOf some) {
    List<Optional<Boolean>> parts = some.parts().stream().map(p -> p.accept(this)).toList();
    long yes = parts.stream().filter(Optional.of(true)::equals).count();
    long no = parts.stream().filter(Optional.of(false)::equals).count();
    if (yes >= some.howMany()) {
      return Optional.of(true);
    }
    return parts.size() - no < some.howMany() ? Optional.of(false) : Optional.empty();
  }

  @Override
  public Optional<Boolean> options(Condition.Options options) {
    Value value = known.get(options.finding());
    if (value instanceof Value.Word word && options.options().contains(word.name())) {
      return Optional.of(true);
    }
    return recorded(options.finding()) ? Optional.of(false) : Optional.empty();
  }

  @Override
  public Optional<Boolean> otherThan(Condition.OtherThan other) {
    return recorded(other.finding())
        ? Optional.of(!other.excluded().equals(known.get(other.finding())))
        : Optional.empty();
  }

  @Override
  public Optional<Boolean> inBand(Condition.InBand in) {
    return in(in.finding(), in.band());
  }

  @Override
  public Optional<Boolean> inNamedBand(Condition.InNamedBand in) {
    return in(in.finding(), policy.band(in.band()).orElseThrow().band());
  }

  private Optional<Boolean> in(String finding, Band band) {
    if (!recorded(finding)) {
      return Optional.empty();
    }
    return Optional.of(
        known.get(finding) instanceof Value.Amount amount
            && above(amount, band.lower())
            && below(amount, band.upper()));
  }

  private boolean above(Value.Amount amount, Optional<Bound> bound) {
    int order =
        bound.map(b -> amount.number().compareTo(policy.number(b.limit()).orElseThrow())).orElse(1);
    return order > 0 || (order == 0 && bound.orElseThrow().inclusive());
  }

  private boolean below(Value.Amount amount, Optional<Bound> bound) {
    int order =
        bound
            .map(b -> amount.number().compareTo(policy.number(b.limit()).orElseThrow()))
            .orElse(-1);
    return order < 0 || (order == 0 && bound.orElseThrow().inclusive());
  }

  @Override
  public Optional<Boolean> termIs(Condition.TermIs is) {
    Optional<Boolean> term = anyOf(policy.term(is.term()).orElseThrow().alternatives());
    return term.map(yes -> yes == is.holds());
  }

  private boolean recorded(String finding) {
    Value value = known.get(finding);
    return value != null
        && !(value instanceof Value.Word word
            && policy
                .vocabulary()
                .require(finding)
                .domain()
                .option(word.name())
                .orElseThrow()
                .nothingRecorded());
  }
}
