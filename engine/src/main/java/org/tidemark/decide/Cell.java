package org.tidemark.decide;

import java.math.BigDecimal;
import org.tidemark.model.Option;

/** A set of values of one finding that no rule of the policy tells apart. */
public sealed interface Cell {
  /**
   * One option.
   *
   * @param option the option
   */
  record OptionCell(Option option) implements Cell {}

  /**
   * Neighbouring readings.
   *
   * @param lowest the lowest
   * @param highest the highest
   */
  record NumberCell(BigDecimal lowest, BigDecimal highest) implements Cell {}

  /** The finding does not exist: there is no pH where nothing came back. */
  record NotApplicable() implements Cell {}
}
