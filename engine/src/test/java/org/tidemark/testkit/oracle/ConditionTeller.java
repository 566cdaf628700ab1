package org.tidemark.testkit.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Limit;
import org.tidemark.model.Option;
import org.tidemark.model.Value;
import org.tidemark.model.Worse;

/**
 * Tells a condition to a solver, in three values: it holds, it does not, or what it looks at is not
 * recorded or does not exist. Written from the model alone, apart from everything that the prover
 * is made of.
 */
final class ConditionTeller<B> implements Condition.Visitor<Truth<B>> {
  private final Logic<B> logic;
  private final EffectivePolicy policy;

  ConditionTeller(Logic<B> logic, EffectivePolicy policy) {
    this.logic = logic;
    this.policy = policy;
  }

  @Override
  public Truth<B> allOf(Condition.AllOf all) {
    List<Truth<B>> parts = told(all.parts());
    return new Truth<>(
        logic.all(parts.stream().map(Truth::yes).toList()),
        logic.any(parts.stream().map(Truth::no).toList()));
  }

  @Override
  public Truth<B> anyOf(Condition.AnyOf any) {
    return any(any.alternatives());
  }

  private Truth<B> any(List<Condition> alternatives) {
    List<Truth<B>> parts = told(alternatives);
    return new Truth<>(
        logic.any(parts.stream().map(Truth::yes).toList()),
        logic.all(parts.stream().map(Truth::no).toList()));
  }

  private List<Truth<B>> told(List<Condition> conditions) {
    return conditions.stream().map(c -> c.accept(this)).toList();
  }

  @Override
  public Truth<B> someOf(Condition.SomeOf some) {
    List<Truth<B>> parts = told(some.parts());
    int tooMany = parts.size() - some.howMany() + 1;
    return new Truth<>(
        atLeast(some.howMany(), parts.stream().map(Truth::yes).toList()),
        atLeast(tooMany, parts.stream().map(Truth::no).toList()));
  }

  /** So many of the formulas: the first and one fewer of the rest, or so many of the rest. */
  private B atLeast(int howMany, List<B> of) {
    if (howMany == 0 || howMany > of.size()) {
      return howMany == 0 ? logic.all(List.of()) : logic.any(List.of());
    }
    List<B> rest = of.subList(1, of.size());
    B withFirst = logic.all(List.of(of.get(0), atLeast(howMany - 1, rest)));
    return logic.any(List.of(withFirst, atLeast(howMany, rest)));
  }

  @Override
  public Truth<B> options(Condition.Options options) {
    B yes = logic.word(options.finding(), options.options());
    return new Truth<>(yes, logic.all(List.of(recorded(options.finding()), logic.not(yes))));
  }

  @Override
  public Truth<B> otherThan(Condition.OtherThan other) {
    String finding = other.finding();
    B same =
        other.excluded() instanceof Value.Word word
            ? logic.word(finding, List.of(word.name()))
            : exactly(finding, ((Value.Amount) other.excluded()).number());
    B recorded = recorded(finding);
    return new Truth<>(
        logic.all(List.of(recorded, logic.not(same))), logic.all(List.of(recorded, same)));
  }

  private B exactly(String finding, BigDecimal number) {
    return logic.all(
        List.of(
            logic.number(finding), logic.atLeast(finding, number), logic.atMost(finding, number)));
  }

  @Override
  public Truth<B> inBand(Condition.InBand in) {
    return in(in.finding(), in.band());
  }

  @Override
  public Truth<B> inNamedBand(Condition.InNamedBand in) {
    return in(in.finding(), policy.band(in.band()).orElseThrow().band());
  }

  /** A number is neither inside nor outside a band of which the policy leaves an end unsaid. */
  private Truth<B> in(String finding, Band band) {
    B recorded = recorded(finding);
    if (unsaid(finding, band)) {
      return new Truth<>(
          logic.any(List.of()), logic.all(List.of(recorded, logic.not(logic.number(finding)))));
    }
    B inside = inside(finding, band);
    return new Truth<>(inside, logic.all(List.of(recorded, logic.not(inside))));
  }

  private B inside(String finding, Band band) {
    List<B> parts = new ArrayList<>(List.of(logic.number(finding)));
    limit(band.lower())
        .ifPresent(
            n ->
                parts.add(
                    band.lower().orElseThrow().inclusive()
                        ? logic.atLeast(finding, n)
                        : logic.not(logic.atMost(finding, n))));
    limit(band.upper())
        .ifPresent(
            n ->
                parts.add(
                    band.upper().orElseThrow().inclusive()
                        ? logic.atMost(finding, n)
                        : logic.not(logic.atLeast(finding, n))));
    return logic.all(parts);
  }

  private Optional<BigDecimal> limit(Optional<Bound> end) {
    return end.flatMap(b -> policy.number(b.limit()));
  }

  /**
   * Whether nothing can be said to lie in the band: a value that was to give an end gives none, or
   * the source leaves open the end at which the measure gets worrying.
   */
  private boolean unsaid(String finding, Band band) {
    Worse worse = policy.vocabulary().require(finding).worse();
    return unsaid(band.lower(), worse instanceof Worse.Higher)
        || unsaid(band.upper(), worse instanceof Worse.Lower);
  }

  private boolean unsaid(Optional<Bound> end, boolean harmless) {
    return end.isPresent()
        && limit(end).isEmpty()
        && !(harmless && end.get().limit() instanceof Limit.NotStated);
  }

  @Override
  public Truth<B> termIs(Condition.TermIs is) {
    Truth<B> term = any(policy.term(is.term()).orElseThrow().alternatives());
    return is.holds() ? term : new Truth<>(term.no(), term.yes());
  }

  private B recorded(String finding) {
    List<String> nothing =
        policy.vocabulary().require(finding).domain().options().stream()
            .filter(Option::nothingRecorded)
            .map(Option::name)
            .toList();
    return logic.not(logic.any(List.of(logic.absent(finding), logic.word(finding, nothing))));
  }
}
