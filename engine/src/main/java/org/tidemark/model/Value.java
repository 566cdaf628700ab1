package org.tidemark.model;

import java.math.BigDecimal;

/** One value that a finding may have. */
public sealed interface Value {
  /**
   * An option, such as {@code obtained} or {@code not-recorded}.
   *
   * @param name the option's name
   */
  record Word(String name) implements Value {
    @Override
    public String toString() {
      return name;
    }
  }

  /**
   * A number, in the unit of its measure; 5 and 5.0 are the same.
   *
   * @param number the number, without trailing zeros
   */
  record Amount(BigDecimal number) implements Value {
    public Amount {
      number = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }

    @Override
    public String toString() {
      return number.toPlainString();
    }
  }

  static Value word(String name) {
    return new Word(name);
  }

  static Value amount(String number) {
    return new Amount(new BigDecimal(number));
  }
}
