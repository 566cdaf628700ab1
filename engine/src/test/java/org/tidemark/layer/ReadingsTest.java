package org.tidemark.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidemark.model.Domain;

/** The readings of a stretch, beside asking the stretch about each reading by itself. */
class ReadingsTest {
  private static final int TRIED = 20_000;

  private static BigDecimal number(Random random) {
    return new BigDecimal(random.nextInt(-80, 200)).movePointLeft(random.nextInt(2));
  }

  private static Optional<BigDecimal> end(Random random) {
    return random.nextInt(5) == 0 ? Optional.empty() : Optional.of(number(random));
  }

  private static Domain.Measure measure(Random random) {
    BigDecimal step = new BigDecimal(List.of("0.5", "1", "0.1", "5").get(random.nextInt(4)));
    BigDecimal lowest = step.multiply(BigDecimal.valueOf(random.nextInt(-4, 4)));
    BigDecimal highest = lowest.add(step.multiply(BigDecimal.valueOf(random.nextInt(1, 40))));
    return new Domain.Measure("mL", lowest, highest, step, List.of());
  }

  private static BitSet oneByOne(Domain.Measure measure, Atom.Stretch stretch, boolean negated) {
    BitSet in = new BitSet();
    BigDecimal at = measure.lowest();
    for (int i = 0; at.compareTo(measure.highest()) <= 0; i++) {
      in.set(i, stretch.holds(at) != negated);
      at = at.add(measure.step());
    }
    return in;
  }

  @Test
  void everyStretchOfEveryMeasure() {
    Random random = new Random(14);
    int some = 0;
    for (int i = 0; i < TRIED; i++) {
      Domain.Measure measure = measure(random);
      Atom.Stretch stretch =
          new Atom.Stretch(
              end(random),
              random.nextBoolean(),
              end(random),
              random.nextBoolean(),
              random.nextInt(8) > 0);
      boolean negated = random.nextBoolean();
      BitSet should = oneByOne(measure, stretch, negated);
      some += should.isEmpty() ? 0 : 1;
      assertEquals(
          should,
          new Readings(measure).of(Atom.stretch("amount", stretch, negated)),
          () -> measure + " " + stretch + " " + negated);
    }
    assertEquals(true, some > TRIED / 10 && some < TRIED);
  }
}
