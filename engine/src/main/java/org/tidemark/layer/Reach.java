package org.tidemark.layer;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Finding;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
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
  }

  private void check(Rule rule) {
    List<List<Atom>> ways = Alternatives.of(policy, rule.given());
    boolean unstated = ways.stream().anyMatch(w -> w.stream().anyMatch(Atom::isUnstated));
    if (!unstated && ways.stream().noneMatch(this::isPossible)) {
      problems.add(neverFires(rule));
    }
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

  private Diagnostic neverFires(Rule rule) {
    String what =
        "the rule `" + rule.name() + "` can never fire, since what it needs cannot be so at once";
    boolean published = policy.header().kind() == PolicyKind.PUBLISHED;
    return (published
            ? Diagnostic.warning(DiagnosticCode.CANNOT_HOLD, rule.place().span(), what)
            : Diagnostic.error(DiagnosticCode.CANNOT_HOLD, rule.place().span(), what))
        .help("correct `given`; a finding is asked only when those that it hangs on are so");
  }
}
