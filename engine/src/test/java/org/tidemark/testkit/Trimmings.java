package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Axis;
import org.tidemark.model.Band;
import org.tidemark.model.Barred;
import org.tidemark.model.Bound;
import org.tidemark.model.Care;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Fallback;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Question;
import org.tidemark.model.Rule;
import org.tidemark.model.Scope;
import org.tidemark.model.Standing;
import org.tidemark.model.Value;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** What a generated policy has beside its rules, drawn from a seed. */
final class Trimmings {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final String STATED = "stated";
  private static final String NOT_STATED = "not-stated";
  private static final int STEPS = 40;

  private final Random random;
  private final List<NamedBand> bands = new ArrayList<>();

  Trimmings(long seed) {
    this.random = new Random(~seed);
  }

  Domain measure() {
    List<Option> words = new ArrayList<>(List.of(new Option("none", "None came")));
    if (random.nextBoolean()) {
      words.add(new Option("not-measured", "Not measured"));
    }
    return new Domain.Measure(
        "mL", new BigDecimal("-1"), new BigDecimal("9"), new BigDecimal("0.25"), words);
  }

  private BigDecimal reading() {
    BigDecimal steps = BigDecimal.valueOf(random.nextInt(STEPS + 1) - 4);
    return steps.multiply(new BigDecimal("0.25"));
  }

  private Limit limit(BigDecimal number) {
    return switch (random.nextInt(8)) {
      case 0 -> new Limit.NotStated();
      case 1 -> new Limit.Named(NOT_STATED);
      case 2 -> new Limit.Named(STATED);
      default -> new Limit.Fixed(number);
    };
  }

  private Optional<Bound> bound(BigDecimal number) {
    return random.nextInt(3) == 0
        ? Optional.empty()
        : Optional.of(new Bound(limit(number), random.nextBoolean()));
  }

  private Band band() {
    BigDecimal one = reading();
    BigDecimal other = reading();
    return new Band(bound(one.min(other)), bound(one.max(other)));
  }

  /** A test of a measure: now and then by the name of a band, which is made for it. */
  Condition test(Finding measure) {
    return switch (random.nextInt(5)) {
      case 0 -> new Condition.OtherThan(measure.name(), new Value.Amount(reading()));
      case 1 -> new Condition.Options(measure.name(), Set.of("none"));
      case 2 -> new Condition.InNamedBand(measure.name(), named(measure));
      default -> new Condition.InBand(measure.name(), band());
    };
  }

  private String named(Finding measure) {
    String name = "band-" + bands.size();
    bands.add(
        new NamedBand(
            name,
            measure.name(),
            band(),
            Optional.of("The source is silent here."),
            Optional.empty(),
            List.of(),
            NOWHERE));
    return name;
  }

  /** The policy with everything added that its checks accept; some bands serve no rule. */
  Policy put(
      Policy plain,
      List<Finding> findings,
      Function<Policy, Loaded<EffectivePolicy>> combine,
      Supplier<Condition> condition) {
    List<Fallback> fallbacks = fallback(condition);
    findings.stream().filter(f -> f.domain() instanceof Domain.Measure).forEach(this::named);
    Policy policy = with(plain, question(plain.questions().get(0)), fallbacks);
    List<Finding> choices =
        findings.stream().filter(f -> f.domain() instanceof Domain.Choice).toList();
    List<Barred> barred = new ArrayList<>();
    for (Finding choice : choices) {
      Barred test = new Barred(choice.name(), List.of("b"), "It does not count.", List.of());
      boolean accepted = combine.apply(barring(policy, List.of(test))).match(p -> true, e -> false);
      if (accepted) {
        barred.add(test);
      }
    }
    return scoped(barring(policy, barred), choices);
  }

  private Question question(Question plain) {
    Set<Axis> speaksOf = EnumSet.of(Axis.POSITION);
    boolean open = random.nextInt(6) == 0;
    if (open) {
      speaksOf.add(Axis.SIGNS);
    }
    return new Question(
        plain.name(),
        plain.asks(),
        plain.words(),
        speaksOf,
        open ? Set.of(Axis.SIGNS) : Set.of(),
        plain.rules(),
        plain.place());
  }

  private List<Fallback> fallback(Supplier<Condition> condition) {
    return List.of(
        new Fallback(
            "fallback",
            "generated",
            condition.get(),
            false,
            List.of(),
            List.of(),
            List.of("Call."),
            Optional.empty(),
            new Rule.Backing(Standing.LOCAL, List.of()),
            NOWHERE));
  }

  private Policy with(Policy plain, Question question, List<Fallback> fallbacks) {
    Care care = new Care(List.of(), fallbacks, List.of(), List.of(), List.of(), Map.of());
    return new Policy(
        plain.header(),
        List.of(
            value(STATED, new PolicyValue.Single(new BigDecimal("4.5"))),
            value(NOT_STATED, new PolicyValue.NotStated())),
        bands,
        List.of(),
        plain.terms(),
        List.of(question),
        care,
        List.of(),
        plain.declared());
  }

  private static PolicyValue value(String name, PolicyValue.Content content) {
    return new PolicyValue(
        name,
        content,
        "mL",
        Optional.empty(),
        Standing.LOCAL,
        List.of(),
        Optional.empty(),
        NOWHERE);
  }

  private static Policy barring(Policy policy, List<Barred> barred) {
    return new Policy(
        policy.header(),
        policy.values(),
        policy.bands(),
        barred,
        policy.terms(),
        policy.questions(),
        policy.care(),
        policy.notStated(),
        policy.declared());
  }

  /** Half of the policies are for some patients only. */
  private Policy scoped(Policy policy, List<Finding> choices) {
    if (choices.size() < 2 || random.nextBoolean()) {
      return policy;
    }
    Header plain = policy.header();
    Condition.Options covers = new Condition.Options(choices.get(0).name(), Set.of("a"));
    Condition.Options not = new Condition.Options(choices.get(1).name(), Set.of("b"));
    Scope scope =
        new Scope(
            List.of(covers),
            List.of(new Scope.Exclusion(not, Optional.empty(), List.of(), NOWHERE)),
            NOWHERE);
    Header header =
        new Header(
            plain.name(),
            plain.kind(),
            plain.title(),
            plain.owner(),
            plain.edition(),
            plain.status(),
            plain.approval(),
            plain.reviewBy(),
            scope,
            plain.buildsOn(),
            plain.place());
    return new Policy(
        header,
        policy.values(),
        policy.bands(),
        policy.barred(),
        policy.terms(),
        policy.questions(),
        policy.care(),
        policy.notStated(),
        policy.declared());
  }
}
