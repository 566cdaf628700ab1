package org.tidemark.trial;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Located;

/**
 * The worked cases of one policy.
 *
 * @param of the policy's name, and where the file says it
 * @param cases the cases
 */
public record CaseFile(Located<String> of, List<WorkedCase> cases) {
  public CaseFile {
    cases = List.copyOf(cases);
  }

  /** The policy's name. */
  public String policy() {
    return of.value();
  }

  /** The case of a name. */
  public Optional<WorkedCase> named(String name) {
    return cases.stream().filter(c -> c.name().equals(name)).findFirst();
  }
}
