package org.tidemark.layer;

import org.tidemark.model.Fallback;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/** Steps end somewhere: a policy that answers says what follows them, and whom to call then. */
final class FallbackChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  FallbackChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    if (policy.header().kind().servesBedside()) {
      policy.care().fallbacks().forEach(this::ends);
    }
  }

  private void ends(Fallback fallback) {
    boolean own = fallback.layer().equals(policy.name());
    if (fallback.then().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.NO_ACTION,
                  own ? fallback.place().span() : policy.header().place().span(),
                  "`" + fallback.name() + "` does not say what follows when its steps are done")
              .help("add `then`, one action a sentence, such as: Ask for an X-ray."));
    }
    if (own && fallback.contact().isEmpty()) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.NO_CONTACT,
                  fallback.place().span(),
                  "`" + fallback.name() + "` does not say whom to call when its steps are done")
              .help("add `contact`"));
    }
  }
}
