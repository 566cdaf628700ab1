package org.tidemark.prove;

/** What came of a claim. There are three, so that "could not tell" is never taken for "fine". */
public sealed interface Verdict {
  /** It holds of every case. */
  record Proved() implements Verdict {}

  /**
   * It does not hold, and here is a case that shows it.
   *
   * @param witness the case
   */
  record Refuted(Witness witness) implements Verdict {}

  /**
   * The budget was spent first. It counts as a failure.
   *
   * @param steps the budget
   */
  record Undecided(int steps) implements Verdict {}

  /** Whether the claim may be relied on. */
  default boolean proved() {
    return this instanceof Proved;
  }
}
