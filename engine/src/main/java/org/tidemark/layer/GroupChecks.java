package org.tidemark.layer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Scope;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Suggestion;

/**
 * Looks at the policies of one owner side by side: no patient has two of them, whoever is sent on
 * arrives somewhere, and a limit of one population was not copied from another unasked.
 */
public final class GroupChecks {
  private final List<EffectivePolicy> policies;
  private final Set<String> known = new HashSet<>();
  private final List<Diagnostic> said = new ArrayList<>();

  private GroupChecks(List<EffectivePolicy> policies) {
    this.policies = policies.stream().filter(p -> p.header().kind().servesBedside()).toList();
    policies.forEach(p -> known.add(p.name()));
  }

  /** What there is to remark on policies that lie together. */
  public static List<Diagnostic> of(List<EffectivePolicy> policies) {
    return new GroupChecks(policies).check();
  }

  private List<Diagnostic> check() {
    policies.forEach(p -> p.header().scope().excludes().forEach(x -> leadsSomewhere(p, x)));
    for (int i = 0; i < policies.size(); i++) {
      for (int j = 0; j < i; j++) {
        pair(policies.get(j), policies.get(i));
      }
    }
    return List.copyOf(said);
  }

  private void leadsSomewhere(EffectivePolicy policy, Scope.Exclusion exclusion) {
    Optional<String> lost = exclusion.see().filter(see -> !known.contains(see));
    boolean alone = policies.stream().noneMatch(p -> p != policy && owner(p).equals(owner(policy)));
    lost.filter(see -> !alone)
        .ifPresent(
            see ->
                said.add(
                    Diagnostic.warning(
                            DiagnosticCode.NO_WAY_ON,
                            exclusion.place().span(),
                            "`" + policy.name() + "` sends on to `" + see + "`, which is not here")
                        .help(
                            Suggestion.nearest(see, List.copyOf(known))
                                .map(near -> "did you mean `" + near + "`?")
                                .orElse("put that policy beside this one, or correct the name"))));
  }

  private void pair(EffectivePolicy one, EffectivePolicy other) {
    if (!owner(one).equals(owner(other)) || related(one, other)) {
      return;
    }
    if (Scopes.meet(one.header().scope(), other.header().scope())) {
      said.add(
          Diagnostic.warning(
                  DiagnosticCode.SCOPES_OVERLAP,
                  other.header().scope().place().span(),
                  "`"
                      + other.name()
                      + "` and `"
                      + one.name()
                      + "` are for some of the same patients")
              .and(one.header().scope().place().span(), "the other one is for these")
              .help("shut them out of one of the two with `not-for`"));
    }
    if (!samePopulation(one.header(), other.header())) {
      other.values().forEach(v -> copied(one, v));
    }
  }

  private static String owner(EffectivePolicy policy) {
    return policy.header().owner();
  }

  private static boolean related(EffectivePolicy one, EffectivePolicy other) {
    return one.layers().stream().anyMatch(l -> l.name().equals(other.name()))
        || other.layers().stream().anyMatch(l -> l.name().equals(one.name()));
  }

  private static boolean samePopulation(Header one, Header other) {
    return Scopes.covered(one.scope(), PopulationChecks.POPULATION)
        .equals(Scopes.covered(other.scope(), PopulationChecks.POPULATION));
  }

  private void copied(EffectivePolicy from, PolicyValue value) {
    from.value(value.name())
        .filter(v -> v.number().isPresent() && v.number().equals(value.number()))
        .filter(v -> !v.place().span().equals(value.place().span()))
        .ifPresent(
            v ->
                said.add(
                    Diagnostic.notice(
                            DiagnosticCode.COPIED_LIMIT,
                            value.place().span(),
                            "`" + value.name() + "` is the same number as for another population")
                        .and(v.place().span(), "`" + from.name() + "` has it here")
                        .help("if it is meant, accept this notice with the reason")));
  }
}
