package org.tidemark.decide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Axis;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Fallback;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Rule;
import org.tidemark.model.Scope;
import org.tidemark.model.Step;

/**
 * The rules that a policy implies without writing them as rules: its scope, the axes nobody has
 * spoken of, its fallback steps.
 */
final class ImpliedRules {
  static final String OUTSIDE_SCOPE = "outside-scope";
  static final String NOT_SPOKEN_OF = "not-spoken-of";

  private final EffectivePolicy policy;
  private final EffectiveQuestion question;

  ImpliedRules(EffectivePolicy policy, EffectiveQuestion question) {
    this.policy = policy;
    this.question = question;
  }

  List<Rule> all() {
    List<Rule> rules = new ArrayList<>();
    scope(rules);
    if (!policy.header().scope().stated() && !question.open().contains(Axis.SCOPE)) {
      rules.add(open(Axis.SCOPE)); // for whom it is, nobody has said: it is for nobody
    }
    question.open().stream().sorted().forEach(axis -> rules.add(open(axis)));
    if (question.speaksOf().contains(Axis.POSITION)) {
      policy.care().fallbacks().forEach(f -> rules.add(fallback(f)));
    }
    return rules;
  }

  private void scope(List<Rule> rules) {
    Scope scope = policy.header().scope();
    for (Condition.Options covered : scope.covers()) {
      Set<String> outside = new TreeSet<>(names(covered.finding()));
      outside.removeAll(covered.options());
      for (Scope.Exclusion exclusion : scope.excludes()) {
        if (exclusion.what().finding().equals(covered.finding())) {
          outside.removeAll(exclusion.what().options());
        }
      }
      if (!outside.isEmpty()) {
        rules.add(
            outside(
                new Condition.Options(covered.finding(), outside), Optional.empty(), List.of()));
      }
    }
    scope.excludes().forEach(e -> rules.add(outside(e.what(), e.see(), e.sources())));
  }

  private List<String> names(String finding) {
    return policy.vocabulary().require(finding).domain().options().stream()
        .map(Option::name)
        .toList();
  }

  private Rule outside(Condition.Options what, Optional<String> see, List<String> sources) {
    Finding finding = policy.vocabulary().require(what.finding());
    String who =
        what.options().stream()
            .map(o -> finding.domain().option(o).map(Option::label).orElse(o))
            .collect(Collectors.joining(" or "));
    String next =
        see.map(s -> "Use the policy " + s + " instead.")
            .orElse("Find the policy that covers this patient and place.");
    return rule(
        OUTSIDE_SCOPE + ":" + what.finding() + ":" + String.join("+", what.options()),
        Effect.HOLD,
        Axis.SCOPE,
        what,
        "This policy is not for: " + who + ".",
        List.of(next),
        Optional.empty(),
        sources);
  }

  private Rule open(Axis axis) {
    return rule(
        NOT_SPOKEN_OF + ":" + axis.word(),
        Effect.HOLD,
        axis,
        new Condition.AllOf(List.of()),
        "This policy does not speak of " + axis.word() + " yet, and silence is not consent.",
        List.of("Ask the owner of the policy."),
        Optional.empty(),
        List.of());
  }

  private Rule fallback(Fallback fallback) {
    List<String> next = new ArrayList<>();
    fallback.steps().forEach(s -> next.add(says(s)));
    fallback.barredSteps().forEach(b -> next.add(b.says()));
    next.addAll(fallback.then());
    return new Rule(
        fallback.name(),
        fallback.layer(),
        Effect.NOT_YET,
        Axis.POSITION,
        fallback.after(),
        Set.of(),
        new Rule.Says(
            Optional.of("The policy has steps for this finding."), Optional.empty(), next),
        Optional.empty(),
        Optional.empty(),
        fallback.contact(),
        Set.of(),
        backing(fallback),
        fallback.place());
  }

  private static Rule.Backing backing(Fallback fallback) {
    Set<String> sources = new LinkedHashSet<>(fallback.backing().sources());
    fallback.steps().forEach(s -> sources.addAll(s.backing().sources()));
    fallback.barredSteps().forEach(b -> sources.addAll(b.backing().sources()));
    return new Rule.Backing(fallback.backing().standing(), List.copyOf(sources));
  }

  private static String says(Step step) {
    return step.alternatives().stream()
        .map(Step.Alternative::says)
        .collect(Collectors.joining(" Or: "));
  }

  private Rule rule(
      String name,
      Effect effect,
      Axis about,
      Condition given,
      String because,
      List<String> next,
      Optional<String> contact,
      List<String> sources) {
    return new Rule(
        name,
        policy.name(),
        effect,
        about,
        given,
        Set.of(),
        new Rule.Says(Optional.of(because), Optional.empty(), next),
        Optional.empty(),
        Optional.empty(),
        contact,
        Set.of(),
        new Rule.Backing(org.tidemark.model.Standing.LOCAL, sources),
        policy.header().place());
  }
}
