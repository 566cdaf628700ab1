package org.tidemark.layer;

import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * A layer covers only patients that the layer below covers: populations never inherit limits from
 * one another.
 */
final class ScopeCheck {
  private final Header below;
  private final Header above;
  private final Problems problems;

  ScopeCheck(Header below, Header above, Problems problems) {
    this.below = below;
    this.above = above;
    this.problems = problems;
  }

  void check() {
    if (above.scope().stated()) {
      below.scope().covers().forEach(this::within);
    }
  }

  private void within(Condition.Options floor) {
    Optional<Set<String>> mine =
        above.scope().covers().stream()
            .filter(c -> c.finding().equals(floor.finding()))
            .map(Condition.Options::options)
            .findFirst();
    if (mine.isPresent() && floor.options().containsAll(mine.get())) {
      return;
    }
    String covered = mine.map(m -> String.join(", ", m)).orElse("everybody");
    problems.add(
        Diagnostic.error(
                DiagnosticCode.OUTSIDE_FLOOR_SCOPE,
                above.scope().place().span(),
                "`"
                    + floor.finding()
                    + "` covers "
                    + covered
                    + ", and the layer below covers "
                    + String.join(", ", floor.options()))
            .and(below.scope().place().span(), "the layer below has it here")
            .help("write " + floor.finding() + " in `for`, within what the layer below covers"));
  }
}
