package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Ordered;

/**
 * One comparison of one finding with constants: the bottom of every condition, with all names
 * settled.
 *
 * @param finding the finding's name
 * @param options the options that it may be; empty for a stretch of numbers
 * @param stretch the stretch of numbers that it may lie in
 * @param negated whether it must be recorded, apply, and be none of these
 */
public record Atom(
    String finding, Set<String> options, Optional<Stretch> stretch, boolean negated) {
  public Atom {
    options = Ordered.set(options);
  }

  /**
   * A stretch of numbers; an absent end is open.
   *
   * @param lower the lower end
   * @param lowerIncluded whether it belongs to the stretch
   * @param upper the upper end
   * @param upperIncluded whether it belongs to the stretch
   * @param stated whether the policy states what is needed; a stretch that is not stated holds no
   *     number
   */
  public record Stretch(
      Optional<BigDecimal> lower,
      boolean lowerIncluded,
      Optional<BigDecimal> upper,
      boolean upperIncluded,
      boolean stated) {

    public boolean holds(BigDecimal number) {
      return stated && aboveLower(number) && belowUpper(number);
    }

    private boolean aboveLower(BigDecimal number) {
      int order = lower.map(number::compareTo).orElse(1);
      return lowerIncluded ? order >= 0 : order > 0;
    }

    private boolean belowUpper(BigDecimal number) {
      int order = upper.map(number::compareTo).orElse(-1);
      return upperIncluded ? order <= 0 : order < 0;
    }
  }

  static Atom options(String finding, Set<String> options, boolean negated) {
    return new Atom(finding, options, Optional.empty(), negated);
  }

  static Atom stretch(String finding, Stretch stretch, boolean negated) {
    return new Atom(finding, Set.of(), Optional.of(stretch), negated);
  }

  Atom negate() {
    return new Atom(finding, options, stretch, !negated);
  }

  /** Whether the policy leaves out a number that this comparison needs. */
  boolean isUnstated() {
    return stretch.isPresent() && !stretch.get().stated();
  }
}
