package org.tidemark.layer;

import java.util.List;
import java.util.stream.Stream;
import org.tidemark.model.Effect;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * Checks what it comes to that readings may be off: some rule must look at them, and none may
 * escalate by them. Near a limit a reading leaves the answer open, and what is open is a hold; so
 * what escalated before would only hold.
 */
final class MisreadingChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  MisreadingChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    if (policy.header().kind() != PolicyKind.PUBLISHED) {
      for (PolicyValue value : policy.values()) {
        value.howFarOff().ifPresent(finding -> check(value, finding));
      }
    }
  }

  private void check(PolicyValue value, String finding) {
    List<Rule> looking = rules().filter(r -> compares(r, finding)).toList();
    if (looking.isEmpty() && policy.header().kind().servesBedside()) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.UNUSED,
                  value.place().span(),
                  "no rule compares a reading of `" + finding + "` with a number")
              .help("delete it, or name the finding whose readings may be off"));
    }
    looking.stream()
        .filter(r -> r.effect() == Effect.ESCALATE)
        .forEach(r -> escalates(value, finding, r));
  }

  private Stream<Rule> rules() {
    return policy.questions().stream().flatMap(q -> q.own().stream());
  }

  private boolean compares(Rule rule, String finding) {
    return Alternatives.of(policy, rule.given()).stream()
        .flatMap(List::stream)
        .anyMatch(a -> a.finding().equals(finding) && a.stretch().isPresent());
  }

  private void escalates(PolicyValue value, String finding, Rule rule) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.MISREAD_ESCALATION,
                value.place().span(),
                "`"
                    + rule.name()
                    + "` escalates by readings of `"
                    + finding
                    + "`; if they may be off, it would only hold near its limit")
            .and(rule.place().span(), "it escalates here")
            .help("leave this out, and set the limits of the rules so much earlier"));
  }
}
