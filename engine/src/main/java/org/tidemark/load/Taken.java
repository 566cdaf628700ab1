package org.tidemark.load;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/** The steps of one fallback: none stands in it twice, and none is both taken and barred. */
final class Taken {
  private final Map<String, Span> steps = new HashMap<>();
  private final Names taken;
  private final Names barred;
  private final Problems problems;

  Taken(Problems problems) {
    this.taken = new Names("step", problems);
    this.barred = new Names("barred step", problems);
    this.problems = problems;
  }

  void step(Located<String> name) {
    taken.give(name.value(), name.span());
    steps.putIfAbsent(name.value(), name.span());
  }

  void barred(Located<String> name) {
    barred.give(name.value(), name.span());
    Optional.ofNullable(steps.get(name.value())).ifPresent(step -> both(name, step));
  }

  private void both(Located<String> name, Span step) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.CANNOT_HOLD,
                name.span(),
                "`" + name.value() + "` is a step and a barred step")
            .and(step, "it is a step here")
            .help("delete it from one of the two lists"));
  }
}
