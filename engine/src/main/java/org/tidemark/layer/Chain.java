package org.tidemark.layer;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.model.Axis;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Ordered;
import org.tidemark.source.Problems;

/**
 * Spells out what it means for a question to come after another: whatever stops the first stops the
 * second, and the second is allowed where an allow rule of each has its force. Each pair of such
 * rules becomes one rule, so that whoever decides or proves needs to know nothing of chains.
 */
final class Chain {
  private final EffectivePolicy apart;
  private final Problems problems;
  private final Map<String, EffectiveQuestion> done = new LinkedHashMap<>();

  /** A policy whose questions hold their own rules only. */
  Chain(EffectivePolicy apart, Problems problems) {
    this.apart = apart;
    this.problems = problems;
  }

  List<EffectiveQuestion> questions() {
    return apart.questions().stream().map(q -> whole(q, new LinkedHashSet<>())).toList();
  }

  private EffectiveQuestion whole(EffectiveQuestion question, Set<String> above) {
    Optional<EffectiveQuestion> before = question.after().flatMap(apart::question);
    EffectiveQuestion known = done.get(question.name());
    if (known != null || before.isEmpty()) {
      return known == null ? question : known;
    }
    if (!above.add(question.name())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.COMES_AFTER_ITSELF,
                  apart.header().place().span(),
                  "the question `" + question.name() + "` comes after itself in the end")
              .help("delete one `after`: " + String.join(", ", above)));
      return question;
    }
    EffectiveQuestion whole = together(whole(before.get(), above), question);
    done.put(question.name(), whole);
    return whole;
  }

  private EffectiveQuestion together(EffectiveQuestion first, EffectiveQuestion second) {
    List<Pair> pairs = pairs(first, second);
    List<Rule> rules = new ArrayList<>();
    Stream.concat(first.rules().stream(), second.rules().stream())
        .filter(r -> r.effect() != Effect.ALLOW)
        .forEach(r -> rules.add(r.effect() == Effect.SET_ASIDE ? ofPairs(r, pairs) : r));
    pairs.forEach(p -> rules.add(p.both()));
    return new EffectiveQuestion(
        second.name(),
        second.asks(),
        second.words(),
        either(first.speaksOf(), second.speaksOf()),
        either(first.open(), second.open()),
        rules,
        second.own(),
        second.after());
  }

  private static Set<Axis> either(Set<Axis> some, Set<Axis> more) {
    Set<Axis> all = EnumSet.noneOf(Axis.class);
    all.addAll(some);
    all.addAll(more);
    return all;
  }

  /** An allow rule of the first question and one of the second, as one rule. */
  private record Pair(String first, String second, Rule both) {}

  private List<Pair> pairs(EffectiveQuestion first, EffectiveQuestion second) {
    List<Pair> pairs = new ArrayList<>();
    for (Rule one : first.rules(Effect.ALLOW)) {
      for (Rule other : second.rules(Effect.ALLOW)) {
        if (Together.canHold(apart, one.given(), other.given())) {
          pairs.add(new Pair(one.name(), other.name(), both(one, other)));
        }
      }
    }
    return List.copyOf(pairs);
  }

  private static Rule both(Rule one, Rule other) {
    return new Rule(
        one.name() + "-and-" + other.name(),
        other.layer(),
        Effect.ALLOW,
        other.about(),
        new Condition.AllOf(List.of(one.given(), other.given())),
        Set.of(),
        new Rule.Says(
            joined(one.says().because(), other.says().because()),
            joined(one.says().doesNotRuleOut(), other.says().doesNotRuleOut()),
            List.of()),
        other.tube().or(one::tube),
        other.running().or(one::running),
        other.contact().or(one::contact),
        Set.of(),
        backing(one.backing(), other.backing()),
        other.place());
  }

  private static Optional<String> joined(Optional<String> one, Optional<String> other) {
    return one.isPresent() && other.isPresent()
        ? Optional.of(one.get() + " " + other.get())
        : one.or(() -> other);
  }

  /** Backed as well as the weaker of the two. */
  private static Rule.Backing backing(Rule.Backing one, Rule.Backing other) {
    Set<String> sources = new LinkedHashSet<>(one.sources());
    sources.addAll(other.sources());
    Standing weaker =
        Stream.of(Standing.FROM_MEMORY, Standing.OUR_READING, Standing.LOCAL)
            .filter(s -> s == one.standing() || s == other.standing())
            .findFirst()
            .orElse(Standing.READ);
    return new Rule.Backing(weaker, List.copyOf(sources));
  }

  /** What takes the force from one rule of a pair takes it from the pair. */
  private static Rule ofPairs(Rule rule, List<Pair> pairs) {
    Set<String> which = new LinkedHashSet<>();
    pairs.stream()
        .filter(p -> rule.which().contains(p.first()) || rule.which().contains(p.second()))
        .forEach(p -> which.add(p.both().name()));
    return new Rule(
        rule.name(),
        rule.layer(),
        rule.effect(),
        rule.about(),
        rule.given(),
        Ordered.set(which),
        rule.says(),
        rule.tube(),
        rule.running(),
        rule.contact(),
        rule.winsOver(),
        rule.backing(),
        rule.place());
  }
}
