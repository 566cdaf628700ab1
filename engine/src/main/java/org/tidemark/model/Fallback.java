package org.tidemark.model;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * What to do when a check gives nothing or gives a bad reading: steps, then what follows them.
 *
 * @param name {@code fallback} or {@code retest}
 * @param layer the policy that wrote it
 * @param after the findings after which it begins
 * @param inOrder whether the order of the steps is stated; cards number them only then
 * @param steps the steps
 * @param barredSteps what must not be done
 * @param then what to do when the steps are done and nothing is confirmed
 * @param contact whom to call then
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Fallback(
    String name,
    String layer,
    Condition after,
    boolean inOrder,
    List<Step> steps,
    List<BarredStep> barredSteps,
    List<String> then,
    Optional<String> contact,
    Rule.Backing backing,
    Place place) {
  public Fallback {
    steps = List.copyOf(steps);
    barredSteps = List.copyOf(barredSteps);
    then = List.copyOf(then);
  }

  /**
   * A step that must not be taken.
   *
   * @param name its name
   * @param says the prohibition, one whole sentence
   * @param backing how well it is backed
   */
  public record BarredStep(String name, String says, Rule.Backing backing) {}
}
