package org.tidemark.layer;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Scope;
import org.tidemark.model.Tray;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * Each population has limits of its own, whoever is shut out is shown the way, and nobody is both
 * covered and shut out.
 */
final class PopulationChecks {
  static final String POPULATION = "population";

  private final EffectivePolicy policy;
  private final Scope scope;
  private final Problems problems;

  PopulationChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.scope = policy.header().scope();
    this.problems = problems;
  }

  void check() {
    if (!policy.header().kind().servesBedside()) {
      return;
    }
    Scopes.covered(scope, POPULATION).filter(p -> p.size() > 1).ifPresent(this::shared);
    scope.excludes().forEach(this::shutOut);
    policy.care().trays().stream()
        .filter(t -> t.layer().equals(policy.name()) && scope.narrowed(t.forWhom()).isEmpty())
        .forEach(this::forNobody);
  }

  private void forNobody(Tray tray) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.CANNOT_HOLD,
                tray.place().span(),
                "the tray `" + tray.name() + "` is for nobody whom the policy is for")
            .and(scope.place().span(), "the policy is for these")
            .help("correct `for` of the tray, or move it to the policy that it belongs to"));
  }

  private void shared(Set<String> populations) {
    boolean limits = policy.values().stream().anyMatch(v -> v.number().isPresent());
    if (limits) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.SHARED_LIMITS,
                  scope.place().span(),
                  "every number here holds for "
                      + String.join(" and ", List.copyOf(populations))
                      + " alike")
              .help("write a policy for each population, or accept this with the reason"));
    }
  }

  private void shutOut(Scope.Exclusion exclusion) {
    if (exclusion.see().isEmpty()) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.NO_WAY_ON,
                  exclusion.place().span(),
                  "nothing says which policy to use instead")
              .help("add see: name-of-the-policy"));
    }
    Condition.Options out = exclusion.what();
    Optional<Set<String>> covered = Scopes.covered(scope, out.finding());
    if (covered.isPresent() && out.options().containsAll(covered.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  exclusion.place().span(),
                  "this shuts out everybody whom the policy is for")
              .and(scope.place().span(), "it is for them here")
              .help("delete it from one of the two"));
    }
  }
}
