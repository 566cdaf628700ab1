package org.tidemark.model;

import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Ordered;

/**
 * What a finding usually is. For writing worked cases only, where a source says nothing of most
 * findings: no answer at a bedside may ever rest on it, and the architecture rules keep it from
 * every room that decides.
 *
 * @param values the usual value of each finding that has one
 */
public record UsualAnswers(Map<String, Value> values) {
  public static final UsualAnswers NONE = new UsualAnswers(Map.of());

  public UsualAnswers {
    values = Ordered.map(values);
  }

  public Optional<Value> of(String finding) {
    return Optional.ofNullable(values.get(finding));
  }
}
