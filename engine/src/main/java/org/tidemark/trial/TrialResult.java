package org.tidemark.trial;

import java.util.List;
import org.tidemark.decide.Decision;

/**
 * What came of a worked case.
 *
 * @param worked the case
 * @param decision the answer that the policy gives
 * @param differences how that differs from what was expected; none when it passes
 */
public record TrialResult(WorkedCase worked, Decision decision, List<String> differences) {
  public TrialResult {
    differences = List.copyOf(differences);
  }

  public boolean passes() {
    return differences.isEmpty();
  }
}
