package org.tidemark.layer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import org.tidemark.model.Domain;

/**
 * The readings that a measure can show, one bit each, so that a measure is looked at as a whole.
 */
final class Readings {
  private final Domain.Measure measure;
  private final long lowest;
  private final int count;

  Readings(Domain.Measure measure) {
    this.measure = measure;
    this.lowest = measure.ticks(measure.lowest());
    this.count = Math.toIntExact(measure.ticks(measure.highest()) - lowest + 1);
  }

  int count() {
    return count;
  }

  BitSet all() {
    BitSet all = new BitSet(count);
    all.set(0, count);
    return all;
  }

  /** The readings that an atom takes in. */
  BitSet of(Atom atom) {
    BitSet in = new BitSet(count);
    atom.stretch()
        .ifPresent(
            stretch -> {
              if (stretch.stated()) {
                in.set(first(stretch), Math.max(first(stretch), end(stretch)));
              }
              if (atom.negated()) {
                in.flip(0, count);
              }
            });
    return in;
  }

  /** The first reading of a stretch. */
  private int first(Atom.Stretch stretch) {
    return stretch
        .lower()
        .map(low -> index(low, RoundingMode.CEILING) + skips(low, stretch.lowerIncluded()))
        .map(this::inside)
        .orElse(0);
  }

  /** The reading after its last. */
  private int end(Atom.Stretch stretch) {
    return stretch
        .upper()
        .map(up -> index(up, RoundingMode.FLOOR) + 1 - skips(up, stretch.upperIncluded()))
        .map(this::inside)
        .orElse(count);
  }

  private long index(BigDecimal number, RoundingMode rounding) {
    return number.divide(measure.step(), 0, rounding).longValueExact() - lowest;
  }

  /**
   * One reading is left out where an end is itself a reading and does not belong to the stretch.
   */
  private int skips(BigDecimal end, boolean included) {
    return !included && measure.onStep(end) ? 1 : 0;
  }

  private int inside(long index) {
    return (int) Math.max(0, Math.min(count, index));
  }

  private BigDecimal number(int index) {
    return measure.number(lowest + index);
  }

  /** The readings in words: {@code 5.5}, {@code 6.0 to 14.0}. */
  String words(BitSet readings) {
    StringJoiner words = new StringJoiner(", ");
    for (int from = readings.nextSetBit(0); from >= 0; ) {
      int end = readings.nextClearBit(from);
      String low = measure.print(number(from));
      words.add(end - from == 1 ? low : low + " to " + measure.print(number(end - 1)));
      from = readings.nextSetBit(end);
    }
    return words.toString();
  }

  /** Whether all of these atoms can hold at once. */
  static boolean consistent(EffectivePolicy policy, List<Atom> atoms) {
    Map<String, Set<String>> words = new HashMap<>();
    Map<String, BitSet> numbers = new HashMap<>();
    for (Atom atom : atoms) {
      Domain domain = policy.vocabulary().require(atom.finding()).domain();
      words.merge(atom.finding(), wordsOf(atom, domain), Readings::both);
      if (domain instanceof Domain.Measure m) {
        numbers.merge(atom.finding(), numbersOf(atom, new Readings(m)), Readings::both);
      }
    }
    return words.keySet().stream()
        .allMatch(
            f ->
                !words.getOrDefault(f, Set.of()).isEmpty()
                    || !numbers.getOrDefault(f, new BitSet()).isEmpty());
  }

  /** None of some words, and something recorded: any number at all. */
  private static BitSet numbersOf(Atom atom, Readings readings) {
    boolean anyNumber = atom.stretch().isEmpty() && atom.negated();
    return anyNumber ? readings.all() : readings.of(atom);
  }

  private static Set<String> wordsOf(Atom atom, Domain domain) {
    Set<String> in = new HashSet<>();
    if (atom.stretch().isEmpty()) {
      domain.options().stream()
          .filter(
              o ->
                  atom.negated()
                      ? !o.nothingRecorded() && !atom.options().contains(o.name())
                      : atom.options().contains(o.name()))
          .forEach(o -> in.add(o.name()));
    }
    return in;
  }

  private static Set<String> both(Set<String> a, Set<String> b) {
    Set<String> both = new HashSet<>(a);
    both.retainAll(b);
    return both;
  }

  private static BitSet both(BitSet a, BitSet b) {
    BitSet both = (BitSet) a.clone();
    both.and(b);
    return both;
  }
}
