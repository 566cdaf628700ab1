package org.tidemark.decide;

/** A policy tells more values of one finding apart than the search can hold. */
public final class TooManyCellsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TooManyCellsException(String finding, int cells) {
    super(
        "the policy tells "
            + cells
            + " kinds of `"
            + finding
            + "` apart, and "
            + Cells.MOST
            + " is the most that can be settled");
  }
}
