package org.tidemark.layer;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tidemark.model.Axis;
import org.tidemark.model.Effect;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.model.Status;
import org.tidemark.model.TubeOrder;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Severity;
import org.tidemark.source.Span;

/**
 * Checks each question: silence is not consent, every stop says what to do and whom to call, and no
 * two orders for the tube clash.
 */
final class QuestionChecks {
  private final EffectivePolicy policy;
  private final Problems problems;
  private final boolean serves;

  QuestionChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
    this.serves = policy.header().kind().servesBedside();
  }

  void check() {
    for (EffectiveQuestion question : policy.questions()) {
      speaksOfWhatItMust(question);
      if (serves) {
        question.rules().stream().filter(QuestionChecks::stops).forEach(this::saysWhatToDo);
        question.rules(Effect.ESCALATE).forEach(this::saysWhomToCall);
      }
      tubeOrders(question);
    }
  }

  private static boolean stops(Rule rule) {
    return rule.effect() == Effect.HOLD
        || rule.effect() == Effect.ESCALATE
        || rule.effect() == Effect.NOT_YET;
  }

  private void speaksOfWhatItMust(EffectiveQuestion question) {
    Set<Axis> silent = new TreeSet<>(question.speaksOf());
    question.rules().forEach(r -> silent.remove(r.about()));
    if (serves) {
      silent.addAll(question.open());
    } else {
      silent.removeAll(question.open());
    }
    if (silent.isEmpty() || question.rules(Effect.ALLOW).isEmpty()) {
      return;
    }
    String names = silent.stream().map(Axis::word).collect(Collectors.joining(", "));
    boolean binding =
        policy.header().kind() == PolicyKind.FLOOR || policy.header().status() == Status.APPROVED;
    problems.add(
        diagnostic(
                binding ? Severity.ERROR : Severity.WARNING,
                DiagnosticCode.AXIS_NOT_SPOKEN_OF,
                policy.header().place().span(),
                "the question `"
                    + question.name()
                    + "` must speak of "
                    + names
                    + ", and no rule does")
            .help(
                "write a rule `about: "
                    + silent.iterator().next().word()
                    + "`; until then the question cannot proceed"));
  }

  private void saysWhatToDo(Rule rule) {
    if (rule.says().next().isEmpty() && rule.tube().isEmpty() && rule.running().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.NO_ACTION,
                  rule.place().span(),
                  "`" + rule.name() + "` stops the work and does not say what to do")
              .help("add `next`, one action a sentence"));
    }
  }

  private void saysWhomToCall(Rule rule) {
    if (rule.contact().isPresent()) {
      return;
    }
    boolean own = rule.layer().equals(policy.name());
    boolean approved = policy.header().status() == Status.APPROVED;
    problems.add(
        diagnostic(
                approved ? Severity.ERROR : Severity.WARNING,
                DiagnosticCode.NO_CONTACT,
                own ? rule.place().span() : policy.header().place().span(),
                "`" + rule.name() + "` escalates and does not say to whom")
            .help(
                own
                    ? "add `contact`"
                    : "the rule stands in `"
                        + rule.layer()
                        + "`; add calls: {"
                        + rule.name()
                        + ": name-of-a-contact}"));
  }

  private void tubeOrders(EffectiveQuestion question) {
    List<Rule> out =
        question.rules().stream()
            .filter(r -> r.tube().filter(t -> t == TubeOrder.TAKE_OUT).isPresent())
            .toList();
    List<Rule> in =
        question.rules().stream()
            .filter(r -> r.tube().filter(t -> t == TubeOrder.LEAVE_IN).isPresent())
            .toList();
    out.forEach(o -> in.forEach(i -> noClash(o, i)));
  }

  private void noClash(Rule out, Rule in) {
    boolean settled = out.winsOver().contains(in.name()) || in.winsOver().contains(out.name());
    if (settled || !Together.canHold(policy, out.given(), in.given())) {
      return;
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.TUBE_ORDERS_CLASH,
                in.place().span(),
                "`"
                    + in.name()
                    + "` leaves the tube in and `"
                    + out.name()
                    + "` takes it out, and both can fire together")
            .and(out.place().span(), "the other rule stands here")
            .help("add wins-over: [" + out.name() + "] to the one that must win"));
  }

  private static Diagnostic diagnostic(
      Severity severity, DiagnosticCode code, Span at, String message) {
    return severity == Severity.ERROR
        ? Diagnostic.error(code, at, message)
        : Diagnostic.warning(code, at, message);
  }
}
