package org.tidemark.model;

import java.util.List;
import java.util.Optional;

/**
 * What those who answer for a policy have settled about it.
 *
 * @param accepted warnings that may stand
 * @param plan who agreed it and until when, where it is a plan for one patient
 * @param alerts alerts that it answers, and by what
 */
public record Control(List<Acceptance> accepted, Optional<Plan> plan, List<AlertAnswer> alerts) {
  /** Nothing settled. */
  public static final Control NONE = new Control(List.of(), Optional.empty(), List.of());

  public Control {
    accepted = List.copyOf(accepted);
    alerts = List.copyOf(alerts);
  }
}
