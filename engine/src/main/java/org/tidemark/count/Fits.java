package org.tidemark.count;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Predicate;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.Value;

/**
 * Whether a condition holds for one item of a list; a field that is not known may be anything, and
 * a reading that may be off is all that it may be.
 */
final class Fits implements Condition.Visitor<Truth> {
  private final EffectivePolicy policy;
  private final TubeRecord.Item item;

  private final boolean asRead;

  Fits(EffectivePolicy policy, TubeRecord.Item item) {
    this(policy, item, false);
  }

  private Fits(EffectivePolicy policy, TubeRecord.Item item, boolean asRead) {
    this.policy = policy;
    this.item = item;
    this.asRead = asRead;
  }

  /** The same, if no reading were off. */
  Fits asRead() {
    return new Fits(policy, item, true);
  }

  @Override
  public Truth allOf(Condition.AllOf all) {
    return Truth.all(all.parts().stream().map(p -> p.accept(this)).toList());
  }

  @Override
  public Truth anyOf(Condition.AnyOf any) {
    return Truth.any(any.alternatives().stream().map(p -> p.accept(this)).toList());
  }

  @Override
  public Truth someOf(Condition.SomeOf some) {
    long sure = some.parts().stream().filter(p -> p.accept(this) == Truth.YES).count();
    long possible = some.parts().stream().filter(p -> p.accept(this) != Truth.NO).count();
    return Truth.of(possible >= some.howMany(), sure < some.howMany());
  }

  @Override
  public Truth options(Condition.Options options) {
    return test(options.finding(), options.options()::contains, (low, high) -> Truth.NO);
  }

  @Override
  public Truth otherThan(Condition.OtherThan other) {
    Value not = other.excluded();
    return test(
        other.finding(),
        o -> !o.equals(not.toString()) && !new Option(o, "").nothingRecorded(),
        (low, high) -> not instanceof Value.Amount a ? is(a.number(), low, high).not() : Truth.YES);
  }

  private static Truth is(BigDecimal number, BigDecimal low, BigDecimal high) {
    boolean within = low.compareTo(number) <= 0 && number.compareTo(high) <= 0;
    return Truth.of(within, low.compareTo(high) != 0 || !within);
  }

  @Override
  public Truth inBand(Condition.InBand in) {
    return test(in.finding(), o -> false, (low, high) -> within(in.band(), low, high));
  }

  @Override
  public Truth inNamedBand(Condition.InNamedBand in) {
    Optional<Band> band = policy.band(in.band()).map(NamedBand::band);
    return test(
        in.finding(),
        o -> false,
        (low, high) -> band.map(b -> within(b, low, high)).orElse(Truth.MAYBE));
  }

  /** Only conditions on findings hold terms; the loader lets none into a list. */
  @Override
  public Truth termIs(Condition.TermIs term) {
    Truth holds =
        policy
            .term(term.term())
            .map(t -> Truth.any(t.alternatives().stream().map(a -> a.accept(this)).toList()))
            .orElse(Truth.MAYBE);
    return term.holds() ? holds : holds.not();
  }

  private Truth within(Band band, BigDecimal low, BigDecimal high) {
    return band.lower()
        .map(b -> above(b, low, high))
        .orElse(Truth.YES)
        .and(band.upper().map(b -> below(b, low, high)).orElse(Truth.YES));
  }

  /** An end that the policy does not state leaves it open. */
  private Truth above(Bound end, BigDecimal low, BigDecimal high) {
    Optional<BigDecimal> number = policy.number(end.limit());
    int least = end.inclusive() ? 0 : 1;
    return number
        .map(n -> Truth.of(high.compareTo(n) >= least, low.compareTo(n) < least))
        .orElse(Truth.MAYBE);
  }

  private Truth below(Bound end, BigDecimal low, BigDecimal high) {
    Optional<BigDecimal> number = policy.number(end.limit());
    int most = end.inclusive() ? 0 : -1;
    return number
        .map(n -> Truth.of(low.compareTo(n) <= most, high.compareTo(n) > most))
        .orElse(Truth.MAYBE);
  }

  /** What is asked of the numbers from one end to the other. */
  private interface Numbers {
    Truth from(BigDecimal low, BigDecimal high);
  }

  private Seen counted(String field, Seen read) {
    return policy.howFarOff().stream()
        .filter(far -> !asRead && far.finding().name().equals(field))
        .map(far -> far.counted(read))
        .findFirst()
        .orElse(read);
  }

  private Truth test(String field, Predicate<String> option, Numbers numbers) {
    Optional<Seen> seen = item.seen(field).map(s -> counted(field, s));
    if (seen.isEmpty()) {
      return Truth.MAYBE;
    }
    boolean mayBe = seen.get().options().stream().anyMatch(option);
    boolean mayNot = seen.get().options().stream().anyMatch(option.negate());
    if (seen.get().from().isPresent() && seen.get().to().isPresent()) {
      Truth number = numbers.from(seen.get().from().get(), seen.get().to().get());
      mayBe |= number != Truth.NO;
      mayNot |= number != Truth.YES;
    }
    return Truth.of(mayBe, mayNot);
  }
}
