package org.tidemark.load;

import java.time.LocalDate;
import java.util.Optional;
import org.tidemark.model.Plan;
import org.tidemark.model.PolicyKind;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/** Reads who agreed a plan for one patient, and until when. */
final class PlanReader {
  private static final String AGREED = "agreed";

  private final Problems problems;

  PlanReader(Problems problems) {
    this.problems = problems;
  }

  Optional<Plan> read(Fields policy, PolicyKind kind) {
    if (kind != PolicyKind.PLAN) {
      refuseElsewhere(policy);
      return Optional.empty();
    }
    onSomething(policy);
    return policy.required(AGREED).flatMap(this::plan);
  }

  private Optional<Plan> plan(YamlNode node) {
    Fields fields = Fields.of(node, "`agreed`", problems);
    Located<String> by = fields.text("by");
    Optional<LocalDate> until =
        fields.requiredText("until").flatMap(t -> Scalars.date(t, problems));
    fields.done();
    return until.map(day -> new Plan(by.value(), day, Place.at(by.span())));
  }

  private void refuseElsewhere(Fields policy) {
    if (policy.has(AGREED)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  policy.key(AGREED),
                  "only a plan for one patient is agreed; a policy is approved")
              .help("write kind: plan, or delete `agreed`"));
    }
  }

  private void onSomething(Fields policy) {
    policy
        .optionalText("builds-on")
        .filter(below -> below.value().equals("nothing"))
        .ifPresent(
            below ->
                problems.add(
                    Diagnostic.error(
                            DiagnosticCode.MISSING_FLOOR,
                            below.span(),
                            "a plan for one patient builds on a policy")
                        .help("name the policy that it changes for this patient")));
  }
}
