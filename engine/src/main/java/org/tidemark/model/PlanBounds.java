package org.tidemark.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How far a plan for one patient may change a number, in either direction, and whose say that
 * needs.
 *
 * @param atLeast the lowest number that a plan may set
 * @param atMost the highest
 * @param by the role that must agree the plan
 */
public record PlanBounds(Optional<BigDecimal> atLeast, Optional<BigDecimal> atMost, String by) {

  public boolean holds(BigDecimal number) {
    boolean stated = atLeast.isPresent() || atMost.isPresent();
    boolean highEnough = atLeast.map(low -> low.compareTo(number) <= 0).orElse(true);
    boolean lowEnough = atMost.map(high -> high.compareTo(number) >= 0).orElse(true);
    return stated && highEnough && lowEnough;
  }
}
