package org.tidemark.testkit.oracle;

import com.microsoft.z3.ArithExpr;
import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Expr;
import com.microsoft.z3.IntExpr;
import com.microsoft.z3.IntNum;
import com.microsoft.z3.IntSort;
import com.microsoft.z3.Model;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.model.Vocabulary;

/**
 * Findings as whole numbers of Z3 (the SMT solver of Microsoft Research, MIT licence; L. de Moura
 * and N. Bjørner, "Z3: An Efficient SMT Solver", TACAS 2008). Each finding has a number that says
 * which option it is, or that it is a measurement, or that it does not exist; a measurement has a
 * second one that counts its steps.
 */
final class Z3Logic implements Logic<BoolExpr> {
  private static final int MEASURED = -1;
  private static final int ABSENT = -2;

  private final Context context;
  private final Vocabulary vocabulary;
  private final Map<String, IntExpr> words = new LinkedHashMap<>();
  private final Map<String, IntExpr> steps = new LinkedHashMap<>();
  private final String suffix;

  /**
   * Makes the unknowns of one case.
   *
   * @param suffix tells the unknowns of this case from those of another
   */
  Z3Logic(Context context, Vocabulary vocabulary, Collection<String> findings, String suffix) {
    this.context = context;
    this.vocabulary = vocabulary;
    this.suffix = suffix;
    for (String finding : findings) {
      words.put(finding, context.mkIntConst(finding + suffix));
      if (vocabulary.require(finding).domain() instanceof Domain.Measure) {
        steps.put(finding, context.mkIntConst(finding + "#" + suffix));
      }
    }
  }

  /** What each finding may be, whatever the others are. */
  BoolExpr domains() {
    return all(words.keySet().stream().map(this::domain).toList());
  }

  BoolExpr domain(String name) {
    Finding finding = vocabulary.require(name);
    List<BoolExpr> either = new ArrayList<>();
    finding.domain().options().forEach(o -> either.add(word(name, List.of(o.name()))));
    if (finding.domain() instanceof Domain.Measure measure) {
      either.add(
          all(
              List.of(
                  number(name), atLeast(name, measure.lowest()), atMost(name, measure.highest()))));
    }
    either.add(absent(name));
    return any(either);
  }

  private IntExpr unknown(Map<String, IntExpr> unknowns, String finding) {
    return Optional.ofNullable(unknowns.get(finding))
        .orElseThrow(() -> new AssertionError("no unknown is called " + finding + suffix));
  }

  @Override
  public BoolExpr all(List<BoolExpr> parts) {
    return context.mkAnd(parts.toArray(BoolExpr[]::new));
  }

  @Override
  public BoolExpr any(List<BoolExpr> parts) {
    return context.mkOr(parts.toArray(BoolExpr[]::new));
  }

  @Override
  public BoolExpr not(BoolExpr part) {
    return context.mkNot(part);
  }

  @Override
  public BoolExpr word(String finding, Collection<String> options) {
    return any(options.stream().map(o -> is(finding, index(finding, o))).toList());
  }

  private int index(String finding, String option) {
    List<String> names =
        vocabulary.require(finding).domain().options().stream().map(Option::name).toList();
    int index = names.indexOf(option);
    if (index < 0) {
      throw new AssertionError(finding + " has no option " + option);
    }
    return index;
  }

  private BoolExpr is(String finding, int word) {
    return context.mkEq(unknown(words, finding), context.mkInt(word));
  }

  @Override
  public BoolExpr number(String finding) {
    return steps.containsKey(finding) ? is(finding, MEASURED) : context.mkFalse();
  }

  @Override
  public BoolExpr absent(String finding) {
    return is(finding, ABSENT);
  }

  @Override
  public BoolExpr atLeast(String finding, BigDecimal number) {
    return context.mkGe(scaled(finding, number), limit(finding, number));
  }

  @Override
  public BoolExpr atMost(String finding, BigDecimal number) {
    return context.mkLe(scaled(finding, number), limit(finding, number));
  }

  /** The measurement, in units so small that the step and the number to compare with are whole. */
  private ArithExpr<IntSort> scaled(String finding, BigDecimal number) {
    BigDecimal step = step(finding);
    IntNum one =
        context.mkInt(
            step.scaleByPowerOfTen(scale(finding, number)).toBigIntegerExact().toString());
    return context.mkMul(unknown(steps, finding), one);
  }

  private IntNum limit(String finding, BigDecimal number) {
    return context.mkInt(
        number.scaleByPowerOfTen(scale(finding, number)).toBigIntegerExact().toString());
  }

  private int scale(String finding, BigDecimal number) {
    return Math.max(0, Math.max(step(finding).scale(), number.scale()));
  }

  private BigDecimal step(String finding) {
    return ((Domain.Measure) vocabulary.require(finding).domain()).step();
  }

  /** This case's measurement has fewer steps than the other case's. */
  BoolExpr fewerSteps(String finding, Z3Logic other) {
    return context.mkLt(unknown(steps, finding), other.unknown(other.steps, finding));
  }

  /** Both cases have the same word, or numbers that lie no further apart than this. */
  BoolExpr alike(String finding, Z3Logic other, BigDecimal within) {
    BoolExpr same = context.mkEq(unknown(words, finding), other.unknown(other.words, finding));
    if (!steps.containsKey(finding)) {
      return same;
    }
    ArithExpr<IntSort> apart =
        context.mkSub(unknown(steps, finding), other.unknown(other.steps, finding));
    IntNum most = context.mkInt(within.divideToIntegralValue(step(finding)).longValueExact());
    BoolExpr near =
        all(List.of(context.mkLe(apart, most), context.mkGe(apart, context.mkUnaryMinus(most))));
    return all(List.of(same, any(List.of(not(number(finding)), near))));
  }

  /** A formula of this case, said of another one. */
  BoolExpr saidOf(Z3Logic other, BoolExpr formula) {
    List<Expr<?>> from = new ArrayList<>();
    List<Expr<?>> to = new ArrayList<>();
    other.words.forEach((f, w) -> from.add(unknown(words, f)));
    to.addAll(other.words.values());
    other.steps.forEach((f, s) -> from.add(unknown(steps, f)));
    to.addAll(other.steps.values());
    return (BoolExpr) formula.substitute(from.toArray(Expr[]::new), to.toArray(Expr[]::new));
  }

  /** What a finding is in a model; nothing if it does not exist. */
  Optional<Seen> seen(String finding, Model model) {
    int word = value(model, unknown(words, finding)).getInt();
    if (word == ABSENT) {
      return Optional.empty();
    }
    if (word != MEASURED) {
      Option option = vocabulary.require(finding).domain().options().get(word);
      return Optional.of(Seen.option(option.name()));
    }
    BigDecimal counted = new BigDecimal(value(model, unknown(steps, finding)).getBigInteger());
    return Optional.of(Seen.number(counted.multiply(step(finding))));
  }

  private static IntNum value(Model model, IntExpr unknown) {
    return (IntNum) model.eval(unknown, true);
  }

  /** The finding is what was seen; one that was not does not exist. */
  BoolExpr matches(String finding, Optional<Seen> seen) {
    if (seen.isEmpty()) {
      return absent(finding);
    }
    Optional<BigDecimal> from = seen.get().from();
    Optional<BigDecimal> to = seen.get().to();
    return from.isPresent() && to.isPresent()
        ? all(List.of(number(finding), atLeast(finding, from.get()), atMost(finding, to.get())))
        : word(finding, seen.get().options());
  }
}
