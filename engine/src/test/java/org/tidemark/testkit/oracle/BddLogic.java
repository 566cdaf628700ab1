package org.tidemark.testkit.oracle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdd.bdd.BDD;
import org.tidemark.model.Domain;
import org.tidemark.model.Option;
import org.tidemark.model.Vocabulary;

/**
 * Findings as binary decision diagrams of JDD (a Java library by A. Vahidi, zlib licence; the
 * method is R. E. Bryant's, "Graph-Based Algorithms for Boolean Function Manipulation", IEEE
 * Transactions on Computers, 1986). Every value of a finding has an index, options first, then
 * "does not exist", then the measurements; each bit of the index is a variable.
 */
final class BddLogic implements Logic<Integer> {
  private static final int NODES = 100_000;
  private static final int CACHE = 20_000;

  private final BDD bdd = new BDD(NODES, CACHE);
  private final Vocabulary vocabulary;
  private final Map<String, int[]> bits = new LinkedHashMap<>();

  BddLogic(Vocabulary vocabulary, Collection<String> findings) {
    this.vocabulary = vocabulary;
    for (String finding : findings) {
      int[] ofFinding = new int[Integer.SIZE - Integer.numberOfLeadingZeros(values(finding) - 1)];
      for (int i = 0; i < ofFinding.length; i++) {
        ofFinding[i] = bdd.createVar();
      }
      bits.put(finding, ofFinding);
    }
  }

  /** Every index stands for a value. */
  Integer domains() {
    return all(bits.keySet().stream().map(f -> not(indexAtLeast(f, values(f)))).toList());
  }

  boolean canBe(Integer formula) {
    return formula != bdd.getZero();
  }

  private List<Option> options(String finding) {
    return vocabulary.require(finding).domain().options();
  }

  private Optional<Domain.Measure> measure(String finding) {
    return vocabulary.require(finding).domain() instanceof Domain.Measure measure
        ? Optional.of(measure)
        : Optional.empty();
  }

  private int firstNumber(String finding) {
    return options(finding).size() + 1;
  }

  private int values(String finding) {
    int numbers =
        measure(finding)
            .map(m -> Math.toIntExact(m.ticks(m.highest()) - m.ticks(m.lowest()) + 1))
            .orElse(0);
    return firstNumber(finding) + numbers;
  }

  /** The diagrams live as long as this does: nothing is ever given back. */
  private int kept(int diagram) {
    return bdd.ref(diagram);
  }

  @Override
  public Integer all(List<Integer> parts) {
    int all = bdd.getOne();
    for (int part : parts) {
      all = kept(bdd.and(all, part));
    }
    return all;
  }

  @Override
  public Integer any(List<Integer> parts) {
    int any = bdd.getZero();
    for (int part : parts) {
      any = kept(bdd.or(any, part));
    }
    return any;
  }

  @Override
  public Integer not(Integer part) {
    return kept(bdd.not(part));
  }

  @Override
  public Integer word(String finding, Collection<String> words) {
    List<String> names = options(finding).stream().map(Option::name).toList();
    return any(words.stream().map(w -> index(finding, names.indexOf(w))).toList());
  }

  @Override
  public Integer number(String finding) {
    return indexAtLeast(finding, firstNumber(finding));
  }

  @Override
  public Integer absent(String finding) {
    return index(finding, firstNumber(finding) - 1);
  }

  @Override
  public Integer atLeast(String finding, BigDecimal number) {
    Domain.Measure measure = measure(finding).orElseThrow();
    int steps = steps(measure, number, RoundingMode.CEILING);
    return indexAtLeast(finding, firstNumber(finding) + Math.max(0, steps));
  }

  @Override
  public Integer atMost(String finding, BigDecimal number) {
    Domain.Measure measure = measure(finding).orElseThrow();
    int steps = steps(measure, number, RoundingMode.FLOOR);
    return not(indexAtLeast(finding, firstNumber(finding) + Math.max(-1, steps) + 1));
  }

  /** How many steps a number lies above the lowest of its measure. */
  private static int steps(Domain.Measure measure, BigDecimal number, RoundingMode mode) {
    return number.subtract(measure.lowest()).divide(measure.step(), 0, mode).intValueExact();
  }

  private int index(String finding, int value) {
    if (value < 0) {
      throw new AssertionError("no such option of " + finding);
    }
    return all(List.of(indexAtLeast(finding, value), not(indexAtLeast(finding, value + 1))));
  }

  /** The index is no lower than a number: compared bit by bit, from the lowest bit up. */
  private int indexAtLeast(String finding, int number) {
    int[] ofFinding = Optional.ofNullable(bits.get(finding)).orElseThrow();
    if (number >> ofFinding.length != 0) {
      return bdd.getZero();
    }
    int diagram = bdd.getOne();
    for (int i = 0; i < ofFinding.length; i++) {
      int bit = ofFinding[ofFinding.length - 1 - i];
      diagram = kept((number >> i & 1) == 1 ? bdd.and(bit, diagram) : bdd.or(bit, diagram));
    }
    return diagram;
  }
}
