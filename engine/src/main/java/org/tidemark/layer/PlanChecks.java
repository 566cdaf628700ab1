package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.Optional;
import org.tidemark.model.Header;
import org.tidemark.model.Plan;
import org.tidemark.model.PlanBounds;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * Lets a plan for one patient set a number, within what the policy below leaves to plans and with
 * the say of the role that it names. All else a plan may only tighten, as any layer.
 */
final class PlanChecks {
  private final Optional<Plan> plan;
  private final Problems problems;

  PlanChecks(Header header, Problems problems) {
    this.plan = header.control().plan();
    this.problems = problems;
  }

  /** Whether this is a number that a plan sets; what is wrong with it is then said. */
  boolean sets(PolicyValue below, PolicyValue above) {
    Optional<PlanBounds> bounds = below.planMaySet();
    Optional<BigDecimal> is = above.number();
    if (plan.isEmpty() || bounds.isEmpty() || is.isEmpty() || !above.unit().equals(below.unit())) {
      return false;
    }
    if (!bounds.get().holds(is.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.LOOSER_THAN_FLOOR,
                  above.place().span(),
                  "`"
                      + above.name()
                      + "` is "
                      + is.get().toPlainString()
                      + " here, outside what a plan may set")
              .and(below.place().span(), "the policy leaves this much to plans")
              .help("keep within the bounds of `plan-may-set`"));
    }
    if (!bounds.get().by().equals(plan.get().by())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.LOOSER_THAN_FLOOR,
                  plan.get().place().span(),
                  "`" + above.name() + "` needs the say of: " + bounds.get().by())
              .and(below.place().span(), "the policy says so here")
              .help("a plan is agreed by the role that the policy names"));
    }
    return true;
  }
}
