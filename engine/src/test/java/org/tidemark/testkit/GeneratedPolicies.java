package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Axis;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Declared;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.Option;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;
import org.tidemark.model.Statement;
import org.tidemark.model.Term;
import org.tidemark.model.Value;
import org.tidemark.model.Worse;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/**
 * Makes small policies out of a seed: with findings that hang on others, words for nothing
 * recorded, terms, bands, set-asides.
 */
public final class GeneratedPolicies {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final Rule.Backing LOCAL = new Rule.Backing(Standing.LOCAL, List.of());

  private final long seed;
  private final Random random;

  /** Draws of its own, so that the rest of a seed's policy stays as it is. */
  private final Random counting;

  private final List<Finding> findings = new ArrayList<>();
  private final List<Term> terms = new ArrayList<>();
  private final Optional<Trimmings> trimmings;

  private GeneratedPolicies(long seed) {
    this.seed = seed;
    this.random = new Random(seed);
    this.counting = new Random(seed + 17);
    this.trimmings = Optional.empty();
  }

  private GeneratedPolicies(long seed, Trimmings trimmings) {
    this.seed = seed;
    this.random = new Random(seed);
    this.counting = new Random(seed + 17);
    this.trimmings = Optional.of(trimmings);
  }

  /** A policy with one question, {@code use}. The same seed gives the same policy. */
  public static EffectivePolicy policy(long seed, int findings, int rules) {
    return new GeneratedPolicies(seed).make(findings, rules);
  }

  /**
   * The same policy as without readings, and with numbers in it that say how far readings of its
   * measures may be off.
   */
  public static EffectivePolicy ofReadings(long seed, int findings, int rules) {
    GeneratedPolicies made = new GeneratedPolicies(seed);
    made.vocabulary(findings);
    Policy policy = made.written(made.rules(rules));
    return PlainPolicies.sound(made.combined(with(made.offs(), policy)));
  }

  private List<PolicyValue> offs() {
    List<PolicyValue> values = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.domain() instanceof Domain.Measure measure && counting.nextInt(4) > 0) {
        BigDecimal steps = BigDecimal.valueOf(1L + counting.nextInt(2));
        values.add(howFarOff(finding.name(), measure, measure.step().multiply(steps)));
      }
    }
    return values;
  }

  /** A value that says how far readings of a finding may be off. */
  public static PolicyValue howFarOff(String finding, Domain.Measure measure, BigDecimal by) {
    return new PolicyValue(
        "off-" + finding,
        new PolicyValue.Single(by),
        measure.unit(),
        Optional.empty(),
        Standing.LOCAL,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(finding),
        NOWHERE);
  }

  private static Policy with(List<PolicyValue> values, Policy policy) {
    return new Policy(
        policy.header(),
        values,
        policy.bands(),
        policy.barred(),
        policy.terms(),
        policy.questions(),
        policy.care(),
        policy.notStated(),
        policy.declared());
  }

  /**
   * Two policies of one vocabulary: the second has all that the first has, and now and then
   * something more or something less.
   */
  public static List<EffectivePolicy> twoAlike(long seed, int findings, int rules) {
    return new GeneratedPolicies(seed).twoAlike(findings, rules);
  }

  /**
   * The same with all that a policy may have beside its rules: named bands and values, of which
   * some are not stated, tests that must not count, a scope, axes left open, and steps to fall back
   * on.
   */
  public static List<EffectivePolicy> twoTrimmed(long seed, int findings, int rules) {
    return new GeneratedPolicies(seed, new Trimmings(seed)).twoAlike(findings, rules);
  }

  private List<EffectivePolicy> twoAlike(int findings, int rules) {
    vocabulary(findings);
    List<Rule> first = rules(rules);
    List<Rule> second = new ArrayList<>(first);
    if (random.nextBoolean()) {
      second.remove(random.nextInt(second.size() - 2) + 2);
    }
    if (random.nextBoolean()) {
      second.add(rule("more", Effect.HOLD, Set.of()));
    }
    return List.of(policy(first), policy(second));
  }

  private EffectivePolicy make(int howManyFindings, int howManyRules) {
    vocabulary(howManyFindings);
    return policy(rules(howManyRules));
  }

  private void vocabulary(int howManyFindings) {
    for (int i = 0; i < howManyFindings; i++) {
      findings.add(finding(i));
    }
    for (int i = 0; i < 2; i++) {
      terms.add(new Term("t" + i, counted(alternatives()), Standing.LOCAL, List.of(), NOWHERE));
    }
  }

  private EffectivePolicy policy(List<Rule> rules) {
    return PlainPolicies.sound(combined(written(rules)));
  }

  private Policy written(List<Rule> rules) {
    List<String> allow =
        rules.stream().filter(r -> r.effect() == Effect.ALLOW).map(Rule::name).toList();
    List<Rule> sound = rules.stream().filter(r -> allow.containsAll(r.which())).toList();
    Policy policy = PlainPolicies.written(List.of(), terms, sound);
    Policy trimmed =
        trimmings.map(t -> t.put(policy, findings, this::combined, this::given)).orElse(policy);
    List<Statement> stated =
        new GeneratedStatements(seed, findings).about(sound, s -> accepts(trimmed, s));
    return stating(trimmed, stated);
  }

  private boolean accepts(Policy policy, Statement statement) {
    return combined(stating(policy, List.of(statement))).match(p -> true, errors -> false);
  }

  private static Policy stating(Policy policy, List<Statement> statements) {
    return new Policy(
        policy.header(),
        policy.values(),
        policy.bands(),
        policy.barred(),
        policy.terms(),
        policy.questions(),
        policy.care(),
        policy.notStated(),
        new Declared(statements, List.of()));
  }

  private Loaded<EffectivePolicy> combined(Policy policy) {
    return PlainPolicies.combined(findings, policy);
  }

  private Finding finding(int i) {
    Domain domain = random.nextInt(3) == 0 ? measure() : choice();
    List<Condition.Options> applies = new ArrayList<>();
    List<Finding> parents =
        findings.stream().filter(f -> f.domain() instanceof Domain.Choice).toList();
    if (!parents.isEmpty() && random.nextInt(3) == 0) {
      Finding parent = parents.get(random.nextInt(parents.size()));
      applies.add(new Condition.Options(parent.name(), someOptions(parent)));
    }
    boolean closes = !applies.isEmpty() && domain instanceof Domain.Choice && random.nextBoolean();
    return new Finding(
        "f" + i,
        "What is f" + i + "?",
        domain,
        worse(domain),
        applies,
        closes ? Optional.of("a") : Optional.empty(),
        Optional.empty(),
        BigDecimal.valueOf(i),
        i % 2 == 1 ? Optional.of("Look at f" + i + " again.") : Optional.empty(),
        Optional.empty(),
        NOWHERE);
  }

  private Worse worse(Domain domain) {
    if (random.nextInt(3) == 0) {
      return new Worse.Neither();
    }
    return domain instanceof Domain.Measure
        ? random.nextBoolean() ? new Worse.Higher() : new Worse.Lower()
        : new Worse.Ranked(List.of("a", "b"));
  }

  private Domain choice() {
    List<Option> options = new ArrayList<>(List.of(new Option("a", "A"), new Option("b", "B")));
    if (random.nextBoolean()) {
      options.add(new Option("c", "C"));
    }
    if (random.nextInt(4) == 0) {
      options.add(new Option("not-recorded", "Not recorded"));
    }
    return new Domain.Choice(options);
  }

  private Domain measure() {
    if (trimmings.isPresent()) {
      return trimmings.get().measure();
    }
    List<Option> words =
        random.nextBoolean() ? List.of(new Option("not-recorded", "Not recorded")) : List.of();
    return new Domain.Measure(
        "mL", BigDecimal.ZERO, new BigDecimal("2"), new BigDecimal("0.5"), words);
  }

  private Set<String> someOptions(Finding finding) {
    List<Option> all = finding.domain().options();
    Set<String> some = new LinkedHashSet<>();
    some.add(all.get(random.nextInt(all.size())).name());
    if (random.nextInt(3) == 0) {
      some.add(all.get(random.nextInt(all.size())).name());
    }
    return some;
  }

  private List<Rule> rules(int howMany) {
    List<Rule> rules = new ArrayList<>();
    rules.add(rule("allow-0", Effect.ALLOW, Set.of()));
    rules.add(rule("allow-1", Effect.ALLOW, Set.of()));
    Effect[] others = {
      Effect.SET_ASIDE, Effect.NOT_YET, Effect.HOLD, Effect.ESCALATE, Effect.ALLOW
    };
    for (int i = 2; i < howMany; i++) {
      Effect effect = others[random.nextInt(others.length)];
      Set<String> which =
          effect == Effect.SET_ASIDE ? Set.of("allow-" + random.nextInt(2)) : Set.of();
      rules.add(rule(effect.word() + "-" + i, effect, which));
    }
    return rules;
  }

  private Rule rule(String name, Effect effect, Set<String> which) {
    return new Rule(
        name,
        "generated",
        effect,
        Axis.POSITION,
        given(),
        which,
        new Rule.Says(Optional.empty(), Optional.empty(), List.of("Do " + name + ".")),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        LOCAL,
        NOWHERE);
  }

  private Condition given() {
    List<Condition> parts = new ArrayList<>();
    int howMany = 1 + random.nextInt(3);
    for (int i = 0; i < howMany; i++) {
      parts.add(test());
    }
    if (random.nextInt(4) == 0) {
      parts.addAll(counted(List.of(new Condition.AnyOf(alternatives()))));
    }
    if (random.nextInt(4) == 0 && !terms.isEmpty()) {
      parts.add(new Condition.TermIs("t" + random.nextInt(terms.size()), random.nextBoolean()));
    }
    return new Condition.AllOf(parts);
  }

  private List<Condition> alternatives() {
    List<Condition> alternatives = new ArrayList<>();
    int howMany = 1 + random.nextInt(3);
    for (int i = 0; i < howMany; i++) {
      alternatives.add(
          new Condition.AllOf(random.nextBoolean() ? List.of(test()) : List.of(test(), test())));
    }
    return alternatives;
  }

  /** Now and then a count of the same: how many of them must hold. */
  private List<Condition> counted(List<Condition> parts) {
    if (counting.nextInt(3) > 0) {
      return parts;
    }
    List<Condition> of = parts.get(0) instanceof Condition.AnyOf any ? any.alternatives() : parts;
    return List.of(new Condition.SomeOf(1 + counting.nextInt(of.size()), of));
  }

  private Condition test() {
    Finding finding = findings.get(random.nextInt(findings.size()));
    if (finding.domain() instanceof Domain.Measure && trimmings.isPresent()) {
      return trimmings.get().test(finding);
    }
    if (finding.domain() instanceof Domain.Measure) {
      return random.nextInt(5) == 0
          ? new Condition.OtherThan(finding.name(), new Value.Amount(reading()))
          : new Condition.InBand(finding.name(), band());
    }
    return random.nextInt(5) == 0
        ? new Condition.OtherThan(
            finding.name(), Value.word(someOptions(finding).iterator().next()))
        : new Condition.Options(finding.name(), someOptions(finding));
  }

  private Band band() {
    BigDecimal one = reading();
    BigDecimal other = reading();
    Bound low = new Bound(new Limit.Fixed(one.min(other)), random.nextBoolean());
    Bound high = new Bound(new Limit.Fixed(one.max(other)), random.nextBoolean());
    return switch (random.nextInt(3)) {
      case 0 -> new Band(Optional.of(low), Optional.empty());
      case 1 -> new Band(Optional.empty(), Optional.of(high));
      default -> new Band(Optional.of(low), Optional.of(high));
    };
  }

  private BigDecimal reading() {
    return new BigDecimal("0.5").multiply(BigDecimal.valueOf(random.nextInt(5)));
  }
}
