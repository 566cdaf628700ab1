package org.tidemark.model;

import java.util.List;

/**
 * What those who answer for a policy have settled about it.
 *
 * @param accepted warnings that may stand
 */
public record Control(List<Acceptance> accepted) {
  /** Nothing settled. */
  public static final Control NONE = new Control(List.of());

  public Control {
    accepted = List.copyOf(accepted);
  }
}
