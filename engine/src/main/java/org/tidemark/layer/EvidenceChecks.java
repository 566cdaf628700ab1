package org.tidemark.layer;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidemark.model.Barred;
import org.tidemark.model.Effect;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;
import org.tidemark.model.Status;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * Checks what a policy rests on: no barred test allows, nothing from memory is issued, and a rule
 * that cannot fire is named.
 */
final class EvidenceChecks {
  private final EffectivePolicy policy;
  private final Problems problems;
  private final Departures departures;

  EvidenceChecks(EffectivePolicy policy, Problems problems, Departures departures) {
    this.policy = policy;
    this.problems = problems;
    this.departures = departures;
  }

  void check() {
    for (EffectiveQuestion question : policy.questions()) {
      question.rules(Effect.ALLOW).forEach(this::restsOnNothingBarred);
      question.rules().forEach(this::canFire);
    }
    if (policy.header().status() == Status.APPROVED) {
      policy.values().stream()
          .filter(v -> v.standing() == Standing.FROM_MEMORY)
          .forEach(this::valueFromMemory);
      policy.questions().stream()
          .flatMap(q -> q.rules().stream())
          .filter(r -> r.backing().standing() == Standing.FROM_MEMORY)
          .forEach(r -> fromMemory("the rule `" + r.name() + "`", r.place().span()));
      Stream.concat(policy.counts().drops().stream(), policy.counts().stomachNeeds().stream())
          .filter(c -> c.backing().standing() == Standing.FROM_MEMORY)
          .forEach(c -> fromMemory("what counts of `" + c.list() + "`", c.place().span()));
    }
  }

  private void restsOnNothingBarred(Rule rule) {
    for (List<Atom> alternative : Alternatives.of(policy, rule.given())) {
      for (Atom atom : alternative) {
        policy.vocabulary().require(atom.finding()).barred().ifPresent(b -> notOn(b, atom, rule));
      }
    }
  }

  private void notOn(Barred test, Atom atom, Rule rule) {
    Set<String> admitted = new TreeSet<>(test.options());
    if (atom.negated()) {
      admitted.removeAll(atom.options());
    } else {
      admitted.retainAll(atom.options());
    }
    String what =
        "`"
            + rule.name()
            + "` allows on `"
            + test.finding()
            + "` being "
            + String.join(" or ", admitted)
            + ", which must not count";
    if (!admitted.isEmpty()
        && !departures.accepts(rule.layer(), test.finding(), rule.name(), what)) {
      problems.add(
          Diagnostic.error(DiagnosticCode.BARRED_EVIDENCE, rule.place().span(), what)
              .help(test.because() + " Take it out of the rule. " + orDeclare()));
    }
  }

  private String orDeclare() {
    String key = policy.header().buildsOn().isPresent() ? "departs-from-floor" : "accepts-barred";
    return "Or declare it under `" + key + "`.";
  }

  private void canFire(Rule rule) {
    List<List<Atom>> alternatives = Alternatives.of(policy, rule.given());
    boolean unstated = alternatives.stream().allMatch(a -> a.stream().anyMatch(Atom::isUnstated));
    if (unstated && !alternatives.isEmpty()) {
      problems.add(
          Diagnostic.notice(
              DiagnosticCode.RULE_CANNOT_FIRE,
              rule.place().span(),
              "the rule `"
                  + rule.name()
                  + "` cannot fire, since a number that it needs is not stated"));
    }
  }

  private void valueFromMemory(PolicyValue value) {
    fromMemory("the value `" + value.name() + "`", value.place().span());
  }

  private void fromMemory(String what, Span at) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.FROM_MEMORY,
                at,
                what + " rests on memory, and this edition is approved")
            .help(
                "open the source and mark it `read`, or make it the hospital's own decision: `local`"));
  }
}
