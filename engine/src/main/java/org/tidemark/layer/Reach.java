package org.tidemark.layer;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Lapse;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.model.Statement;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/** Finds rules that no patient can meet: a stop that looks written and never comes. */
final class Reach {
  private final EffectivePolicy policy;
  private final Problems problems;

  Reach(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    policy.questions().forEach(q -> q.rules().forEach(this::check));
    policy.statements().forEach(this::check);
    policy.care().lapses().forEach(l -> l.triggers().seen().ifPresent(s -> check(l, s)));
  }

  private void check(Rule rule) {
    if (never(rule.given())) {
      problems.add(
          neverFires("rule `" + rule.name() + "` can never fire", rule.place(), "`given`"));
    }
  }

  private void check(Statement statement) {
    if (never(statement.given())) {
      problems.add(
          neverFires(
              "statement `" + statement.name() + "` speaks of no case",
              statement.place(),
              "`given`"));
    }
  }

  private void check(Lapse lapse, Condition seen) {
    if (never(seen)) {
      problems.add(
          neverFires("lapse `" + lapse.name() + "` can never be seen", lapse.place(), "`seen`"));
    }
  }

  private boolean never(Condition condition) {
    List<List<Atom>> ways = Alternatives.of(policy, condition);
    boolean unstated = ways.stream().anyMatch(w -> w.stream().anyMatch(Atom::isUnstated));
    return !unstated && ways.stream().noneMatch(this::isPossible);
  }

  /** Whether the atoms can hold together, and every finding in them is one that is asked then. */
  private boolean isPossible(List<Atom> way) {
    List<Atom> all = new ArrayList<>(way);
    for (int i = 0; i < all.size(); i++) {
      Finding finding = policy.vocabulary().require(all.get(i).finding());
      if (finding.whenClosed().isEmpty()) {
        finding.applies().forEach(p -> all.add(Atom.options(p.finding(), p.options(), false)));
      }
    }
    return Readings.consistent(policy, all);
  }

  private Diagnostic neverFires(String never, Place place, String field) {
    String what = "the " + never + ", since what it needs cannot be so at once";
    boolean published = policy.header().kind() == PolicyKind.PUBLISHED;
    return (published
            ? Diagnostic.warning(DiagnosticCode.CANNOT_HOLD, place.span(), what)
            : Diagnostic.error(DiagnosticCode.CANNOT_HOLD, place.span(), what))
        .help("correct " + field + "; a finding is asked only when those that it hangs on are so");
  }
}
