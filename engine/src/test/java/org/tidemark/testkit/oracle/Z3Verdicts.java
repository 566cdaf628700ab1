package org.tidemark.testkit.oracle;

import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;

/** Two claims alone, for measures: the formula of one claim and its search, and nothing else. */
public final class Z3Verdicts {
  private Z3Verdicts() {}

  /** Whether every case of a question is spoken of by a rule. */
  public static boolean complete(EffectivePolicy policy, EffectiveQuestion question) {
    try (Z3Oracle oracle = new Z3Oracle(policy, Optional.empty(), question)) {
      return !oracle.exists(oracle.all().gap().formula());
    }
  }

  /** Whether no case is answered more loosely than by the floor. */
  public static boolean neverLooser(
      EffectivePolicy policy, EffectivePolicy floor, EffectiveQuestion question) {
    try (Z3Oracle oracle = new Z3Oracle(policy, Optional.of(floor), question)) {
      return !oracle.exists(oracle.all().floor().orElseThrow().formula());
    }
  }
}
