package org.tidemark.trial;

import java.util.List;

/**
 * The worked cases of one policy.
 *
 * @param policy the policy's name
 * @param cases the cases
 */
public record CaseFile(String policy, List<WorkedCase> cases) {
  public CaseFile {
    cases = List.copyOf(cases);
  }
}
