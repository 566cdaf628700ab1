package org.tidemark.guide;

import java.util.Optional;

/**
 * What a reader wants guidance for. Articles for emergencies always pass.
 *
 * @param population whom
 * @param tube which tube
 * @param stage when
 */
public record GuidanceFilter(
    Optional<Population> population, Optional<TubeKind> tube, Optional<Stage> stage) {
  /** Everything. */
  public static final GuidanceFilter ALL =
      new GuidanceFilter(Optional.empty(), Optional.empty(), Optional.empty());

  public GuidanceFilter population(Population whom) {
    return new GuidanceFilter(Optional.of(whom), tube, stage);
  }

  public GuidanceFilter tube(TubeKind which) {
    return new GuidanceFilter(population, Optional.of(which), stage);
  }

  public GuidanceFilter stage(Stage when) {
    return new GuidanceFilter(population, tube, Optional.of(when));
  }
}
