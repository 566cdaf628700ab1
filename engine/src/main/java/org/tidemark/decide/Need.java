package org.tidemark.decide;

import java.util.List;
import org.tidemark.model.Option;

/**
 * A finding that can still change the answer.
 *
 * @param finding its name
 * @param asks what to ask
 * @param options the options that it may have
 * @param unit its unit; empty for a choice
 */
public record Need(String finding, String asks, List<Option> options, String unit) {
  public Need {
    options = List.copyOf(options);
  }
}
