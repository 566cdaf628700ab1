package org.tidemark.testkit.oracle;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/**
 * What a solver must offer, so that a policy can be told to it: and, or, not, and what one finding
 * may be.
 *
 * @param <B> a formula of the solver
 */
interface Logic<B> {
  /** All of them hold; of none, always. */
  B all(List<B> parts);

  /** At least one of them holds; of none, never. */
  B any(List<B> parts);

  B not(B part);

  /** The finding is one of these options. */
  B word(String finding, Collection<String> options);

  /** The finding is a number. */
  B number(String finding);

  /** The finding does not exist. */
  B absent(String finding);

  /** The finding's number, if it is one, is this one or a higher one. */
  B atLeast(String finding, BigDecimal number);

  /** The finding's number, if it is one, is this one or a lower one. */
  B atMost(String finding, BigDecimal number);
}
