package org.tidemark.layer;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.tidemark.model.Condition;
import org.tidemark.model.Term;

/**
 * Counts the alternatives that a condition spells out into, without spelling them out: "any six of
 * twelve" is short to write and long to look at.
 */
final class Ways implements Condition.Visitor<BigInteger> {
  private final EffectivePolicy policy;

  private Ways(EffectivePolicy policy) {
    this.policy = policy;
  }

  static BigInteger of(EffectivePolicy policy, Condition condition) {
    return condition.accept(new Ways(policy));
  }

  @Override
  public BigInteger allOf(Condition.AllOf all) {
    return product(all.parts(), p -> p.accept(this));
  }

  @Override
  public BigInteger anyOf(Condition.AnyOf any) {
    return sum(any.alternatives(), a -> a.accept(this));
  }

  @Override
  public BigInteger someOf(Condition.SomeOf some) {
    return choose(some.howMany(), some.parts(), p -> p.accept(this));
  }

  @Override
  public BigInteger termIs(Condition.TermIs is) {
    List<Condition> alternatives = policy.term(is.term()).map(Term::alternatives).orElse(List.of());
    return is.holds() ? sum(alternatives, a -> a.accept(this)) : product(alternatives, this::fails);
  }

  /** The ways in which a condition is recorded and false. */
  private BigInteger fails(Condition condition) {
    if (condition instanceof Condition.AllOf all) {
      return sum(all.parts(), this::fails);
    }
    if (condition instanceof Condition.AnyOf any) {
      return product(any.alternatives(), this::fails);
    }
    if (condition instanceof Condition.SomeOf some) {
      return choose(some.parts().size() - some.howMany() + 1, some.parts(), this::fails);
    }
    return condition instanceof Condition.TermIs is
        ? termIs(new Condition.TermIs(is.term(), !is.holds()))
        : BigInteger.ONE;
  }

  private static BigInteger product(List<Condition> parts, Function<Condition, BigInteger> count) {
    return parts.stream().map(count).reduce(BigInteger.ONE, BigInteger::multiply);
  }

  private static BigInteger sum(List<Condition> parts, Function<Condition, BigInteger> count) {
    return parts.stream().map(count).reduce(BigInteger.ZERO, BigInteger::add);
  }

  /** The sum, over every choice of so many parts, of the product of their counts. */
  private static BigInteger choose(
      int howMany, List<Condition> parts, Function<Condition, BigInteger> count) {
    List<BigInteger> sums = new ArrayList<>(Collections.nCopies(howMany + 1, BigInteger.ZERO));
    sums.set(0, BigInteger.ONE);
    for (Condition part : parts) {
      BigInteger ways = count.apply(part);
      for (int k = howMany; k > 0; k--) {
        sums.set(k, sums.get(k).add(sums.get(k - 1).multiply(ways)));
      }
    }
    return sums.get(howMany);
  }

  @Override
  public BigInteger options(Condition.Options options) {
    return BigInteger.ONE;
  }

  @Override
  public BigInteger otherThan(Condition.OtherThan other) {
    return BigInteger.ONE;
  }

  @Override
  public BigInteger inBand(Condition.InBand in) {
    return BigInteger.ONE;
  }

  @Override
  public BigInteger inNamedBand(Condition.InNamedBand in) {
    return BigInteger.ONE;
  }
}
