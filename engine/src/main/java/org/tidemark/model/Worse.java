package org.tidemark.model;

import java.util.List;

/** Which way a finding gets more worrying. */
public sealed interface Worse {
  /** No way: the options are of different kinds. */
  record Neither() implements Worse {}

  /** The higher number. */
  record Higher() implements Worse {}

  /** The lower number. */
  record Lower() implements Worse {}

  /**
   * The later option; options not listed are outside any order.
   *
   * @param leastToMost option names
   */
  record Ranked(List<String> leastToMost) implements Worse {
    public Ranked {
      leastToMost = List.copyOf(leastToMost);
    }
  }
}
