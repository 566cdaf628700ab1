package org.tidemark.decide;

import java.util.List;

/** The smallest set of findings that does something, if there is one. */
public sealed interface Least {
  /**
   * There is none smaller.
   *
   * @param findings in asking order; as long as each has one of its values, it does what was asked
   */
  record Found(List<Observation> findings) implements Least {
    public Found {
      findings = List.copyOf(findings);
    }
  }

  /** No set of findings does it. */
  record NoneExists() implements Least {}

  /** The budget was spent first. Never taken for either of the others. */
  record NotWorkedOut() implements Least {}
}
