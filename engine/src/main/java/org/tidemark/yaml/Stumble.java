package org.tidemark.yaml;

import java.util.Optional;
import org.tidemark.source.Span;

/**
 * Where a reading could not go on.
 *
 * @param problem the parser's own words
 * @param at where it stopped
 * @param began where the thing began that it was reading
 * @param quoted the last quoted text before, if any; one quote too few swallows whole lines
 */
record Stumble(String problem, Span at, Optional<Span> began, Optional<Span> quoted) {

  /** The place that is to blame: mostly where the parser stopped, but not always. */
  Span blame() {
    boolean swallowed =
        quoted.isPresent()
            && quoted.get().line() < at.line()
            && at.source().lineAt(quoted.get().end()) == at.line();
    if (swallowed) {
      return quoted.get();
    }
    boolean earlier =
        problem.contains("unexpected end of stream")
            || problem.contains("could not find expected ':'")
            || problem.contains("expected ',' or");
    return earlier ? began.orElse(at) : at;
  }
}
