package org.tidemark.model;

/**
 * The three answers, from the least to the most cautious. The order is what "never looser" means.
 */
public enum Outcome implements Worded {
  PROCEED,
  HOLD,
  ESCALATE;

  /** The more cautious of two. */
  public Outcome orMoreCautious(Outcome other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
