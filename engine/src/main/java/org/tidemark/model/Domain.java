package org.tidemark.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * The values that a finding may have. Closed, so that questions over all findings can be settled.
 */
public sealed interface Domain {
  /** The options that are words: all of a choice, or what may be entered in place of a number. */
  List<Option> options();

  default Optional<Option> option(String name) {
    return options().stream().filter(o -> o.name().equals(name)).findFirst();
  }

  /**
   * A choice of options.
   *
   * @param options in the order in which they are shown
   */
  record Choice(List<Option> options) implements Domain {
    public Choice {
      options = List.copyOf(options);
    }
  }

  /**
   * A number with a unit.
   *
   * @param unit the unit
   * @param lowest the lowest number
   * @param highest the highest number
   * @param step the distance between two numbers that can be told apart
   * @param options what may be entered in place of a number, such as {@code not-recorded}
   */
  record Measure(
      String unit, BigDecimal lowest, BigDecimal highest, BigDecimal step, List<Option> options)
      implements Domain {
    public Measure {
      options = List.copyOf(options);
    }

    /** Whether the number lies on one of the measure's steps. */
    public boolean onStep(BigDecimal number) {
      return number.remainder(step).signum() == 0;
    }

    public boolean inRange(BigDecimal number) {
      return number.compareTo(lowest) >= 0 && number.compareTo(highest) <= 0;
    }

    /** The number as a count of steps; it must lie on one. */
    public long ticks(BigDecimal number) {
      return number.divide(step, 0, RoundingMode.UNNECESSARY).longValueExact();
    }

    /** The number that is so many steps. */
    public BigDecimal number(long ticks) {
      return step.multiply(BigDecimal.valueOf(ticks));
    }

    /** A number printed with the decimals of the step, so that 5 on a half-unit strip reads 5.0. */
    public String print(BigDecimal number) {
      int decimals = Math.max(0, step.stripTrailingZeros().scale());
      return number
          .setScale(
              Math.max(decimals, Math.max(0, number.stripTrailingZeros().scale())),
              RoundingMode.UNNECESSARY)
          .toPlainString();
    }
  }
}
