package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.model.Axis;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Care;
import org.tidemark.model.Condition;
import org.tidemark.model.Declared;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Question;
import org.tidemark.model.Rule;
import org.tidemark.model.Scope;
import org.tidemark.model.Standing;
import org.tidemark.model.Status;
import org.tidemark.model.Term;
import org.tidemark.model.Vocabulary;
import org.tidemark.model.Worse;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** Policies made of findings and rules alone, with one question, {@code use}. */
public final class PlainPolicies {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());

  private PlainPolicies() {}

  /** Findings and rules, combined. */
  public static EffectivePolicy policy(List<Finding> findings, List<Rule> rules) {
    return sound(combined(findings, written(List.of(), List.of(), rules)));
  }

  /** What was combined, which must have nothing wrong with it. */
  static EffectivePolicy sound(Loaded<EffectivePolicy> combined) {
    return combined.match(
        p -> p,
        errors -> {
          throw new AssertionError(errors.toString());
        });
  }

  /** The policy that a file with bands, terms and rules would be read as. */
  public static Policy written(List<NamedBand> bands, List<Term> terms, List<Rule> rules) {
    Question use =
        new Question(
            "use", Optional.of("May it be used?"), Map.of(), Set.of(), Set.of(), rules, NOWHERE);
    Care care = new Care(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of());
    return new Policy(
        header(),
        List.of(),
        bands,
        List.of(),
        terms,
        List.of(use),
        care,
        List.of(),
        Declared.NOTHING);
  }

  /** The policy alone, over a vocabulary of these findings. */
  public static Loaded<EffectivePolicy> combined(List<Finding> findings, Policy policy) {
    return Layering.combine(new Vocabulary("plain", 1, findings), List.of(policy));
  }

  private static Header header() {
    return new Header(
        "generated",
        PolicyKind.PUBLISHED,
        "Generated",
        "Nobody",
        1,
        Status.DRAFT,
        Optional.empty(),
        Optional.empty(),
        new Scope(List.of(), List.of(), NOWHERE),
        Optional.empty(),
        NOWHERE);
  }

  /** A number from 0 on, in whole steps. */
  static Domain whole(int values) {
    return new Domain.Measure(
        "mL", BigDecimal.ZERO, BigDecimal.valueOf(values - 1L), BigDecimal.ONE, List.of());
  }

  /** One of these, whose labels are their names. */
  public static Domain choice(List<String> names) {
    return new Domain.Choice(names.stream().map(n -> new Option(n, n)).toList());
  }

  static Finding finding(int order, Domain domain, Worse worse, List<Condition.Options> applies) {
    return finding("f" + order, order, domain, worse, applies);
  }

  /** A finding that hangs on others, or on none. */
  public static Finding finding(
      String name, int order, Domain domain, Worse worse, List<Condition.Options> applies) {
    return new Finding(
        name,
        "What is " + name + "?",
        domain,
        worse,
        applies,
        Optional.empty(),
        Optional.empty(),
        BigDecimal.valueOf(order),
        Optional.empty(),
        Optional.empty(),
        NOWHERE);
  }

  /** From one number to another, both included. */
  static Condition between(String finding, int from, int to) {
    Bound low = new Bound(new Limit.Fixed(BigDecimal.valueOf(from)), true);
    Bound high = new Bound(new Limit.Fixed(BigDecimal.valueOf(to)), true);
    return new Condition.InBand(finding, new Band(Optional.of(low), Optional.of(high)));
  }

  /** A rule that holds where all of these do. */
  public static Rule rule(String name, Effect effect, List<Condition> given, Set<String> which) {
    return new Rule(
        name,
        "generated",
        effect,
        Axis.POSITION,
        new Condition.AllOf(given),
        which,
        new Rule.Says(Optional.empty(), Optional.empty(), List.of("Do " + name + ".")),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        new Rule.Backing(Standing.LOCAL, List.of()),
        NOWHERE);
  }
}
