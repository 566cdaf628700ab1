package org.tidemark.trial;

import java.util.List;
import org.tidemark.model.Header;

/**
 * What came of trying a policy on its worked cases.
 *
 * @param policy the policy
 * @param results each case, in the file's order
 * @param coverage what of the policy the cases reach
 */
public record TrialReport(Header policy, List<TrialResult> results, Coverage coverage) {
  public TrialReport {
    results = List.copyOf(results);
  }

  public List<TrialResult> failures() {
    return results.stream().filter(r -> !r.passes()).toList();
  }

  public int passed() {
    return results.size() - failures().size();
  }

  public boolean allPass() {
    return failures().isEmpty();
  }
}
