package org.tidemark.guide;

import java.math.BigDecimal;
import java.util.List;

/**
 * How a typed query was understood.
 *
 * @param typed what was typed, cut at the longest length that is looked at
 * @param read what was searched for
 * @param corrections words that no text holds, and what they were taken for
 * @param numbers numbers and their units
 */
public record QueryReading(
    String typed, String read, List<Correction> corrections, List<Measured> numbers) {
  /**
   * A mistyped word.
   *
   * @param typed as it was typed
   * @param taken as it was read
   */
  public record Correction(String typed, String taken) {}

  /**
   * A number in a query.
   *
   * @param value the number
   * @param unit its unit in small letters, such as {@code ph}, {@code ml}, {@code cm}; empty when
   *     none was typed
   */
  public record Measured(BigDecimal value, String unit) {}

  public QueryReading {
    corrections = List.copyOf(corrections);
    numbers = List.copyOf(numbers);
  }
}
