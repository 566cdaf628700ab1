package org.tidemark.model;

import java.math.BigDecimal;

/** The number at the end of a band. */
public sealed interface Limit {
  /**
   * A number written in place.
   *
   * @param number the number
   */
  record Fixed(BigDecimal number) implements Limit {
    public Fixed {
      number = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }
  }

  /**
   * One of the policy's values, so that the number is written once.
   *
   * @param value the value's name
   */
  record Named(String value) implements Limit {}

  /** The source states no number here. */
  record NotStated() implements Limit {}
}
