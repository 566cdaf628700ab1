package org.tidemark.model;

import java.util.List;

/**
 * One step of a fallback; with several alternatives, either will do.
 *
 * @param alternatives one way or more to do it, in words; names of values in braces are filled in
 * @param backing how well it is backed
 */
public record Step(List<Alternative> alternatives, Rule.Backing backing) {
  public Step {
    alternatives = List.copyOf(alternatives);
  }

  /**
   * One way to do a step.
   *
   * @param name its name, such as {@code turn-left}
   * @param says what to do, one sentence
   */
  public record Alternative(String name, String says) {}
}
