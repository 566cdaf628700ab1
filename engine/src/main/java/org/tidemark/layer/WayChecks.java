package org.tidemark.layer;

import java.math.BigInteger;
import org.tidemark.model.Condition;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/** Refuses a condition that would spell out into more alternatives than can be looked at. */
final class WayChecks {
  static final BigInteger MOST = BigInteger.valueOf(1_000);

  private final EffectivePolicy policy;
  private final Problems problems;

  WayChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    statements();
    policy
        .questions()
        .forEach(
            q ->
                q.rules().forEach(r -> check("the rule `" + r.name() + "`", r.given(), r.place())));
    policy
        .care()
        .fallbacks()
        .forEach(f -> check("`after` of `" + f.name() + "`", f.after(), f.place()));
  }

  private void statements() {
    policy
        .statements()
        .forEach(s -> check("the statement `" + s.name() + "`", s.given(), s.place()));
  }

  private void check(String what, Condition condition, Place place) {
    BigInteger ways = Ways.of(policy, condition);
    if (ways.compareTo(MOST) > 0) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TOO_MANY_WAYS,
                  place.span(),
                  what + " can hold in " + ways + " ways, and " + MOST + " are the most")
              .help("ask for fewer of them, or make several rules of it"));
    }
  }
}
