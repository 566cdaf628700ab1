package org.tidemark.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Reason;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Rule;
import org.tidemark.model.Seen;

/** Puts the way to an answer into steps. */
final class Explainer {
  private final CompiledQuestion question;
  private final Findings findings;
  private final Set<String> recorded;
  private final WorkedCase worked;
  private final Decision decision;
  private final List<String> differences;

  /**
   * Of one case.
   *
   * @param recorded the findings that the tube's record yields
   */
  Explainer(
      CompiledQuestion question, Findings findings, Set<String> recorded, TrialResult result) {
    this.question = question;
    this.findings = findings;
    this.recorded = recorded;
    this.worked = result.worked();
    this.decision = result.decision();
    this.differences = result.differences();
  }

  List<Explanation.Step> steps() {
    return List.of(
        step("entered", "What was entered", entered()),
        step("does-not-count", "What of it does not count", doesNotCount()),
        step("fires", "Which rules fire", fires()),
        step("set-aside", "Which of them lose their force, and to what", setAside()),
        step("open", "What is still open", open()),
        step("answer", "The answer", answer()),
        step("expected", "What the case expects", expected()));
  }

  private static Explanation.Step step(String name, String heading, List<String> lines) {
    return new Explanation.Step(name, heading, lines.isEmpty() ? List.of("Nothing.") : lines);
  }

  /** What the case itself states, and then what it takes to be as usual and a rule looks at. */
  private List<String> entered() {
    List<String> stated = new ArrayList<>();
    List<String> recorded = new ArrayList<>();
    List<String> usual = new ArrayList<>();
    for (Finding finding : question.policy().vocabulary().findings()) {
      Optional<Findings.Entry> entry = findings.entry(finding.name());
      boolean byCase = worked.findings().entry(finding.name()).isPresent();
      boolean matters = question.space().position(finding.name()).isPresent();
      if (entry.isPresent() && (byCase || matters)) {
        String line = finding.asks() + " " + words(finding, entry.get().seen());
        if (byCase) {
          stated.add(line);
        } else if (this.recorded.contains(finding.name())) {
          recorded.add(line + " (from the record)");
        } else {
          usual.add(line + " (not stated; taken as usual)");
        }
      }
    }
    stated.addAll(recorded);
    stated.addAll(usual);
    decision.countsAs().forEach(c -> stated.add(c.sentence()));
    return stated;
  }

  private static String words(Finding finding, Seen seen) {
    List<String> all = new ArrayList<>();
    if (finding.domain() instanceof Domain.Measure measure && seen.from().isPresent()) {
      String low = measure.print(seen.from().get());
      String high = seen.to().map(measure::print).orElse(low);
      all.add((low.equals(high) ? low : low + " to " + high) + " " + measure.unit());
    }
    seen.options().forEach(o -> all.add(finding.domain().option(o).map(Option::label).orElse(o)));
    return String.join(" or ", all);
  }

  private List<String> doesNotCount() {
    return decision.doesNotCount().stream().map(d -> d.found() + ". " + d.because()).toList();
  }

  private List<String> fires() {
    return decision.reasons().stream()
        .map(r -> "`" + r.rule() + "`, about " + r.about().word() + ": " + does(r) + because(r))
        .toList();
  }

  private String does(Reason reason) {
    return switch (reason.effect()) {
      case ALLOW -> "alone it would allow.";
      case SET_ASIDE -> "takes the force from " + whichOf(reason.rule()) + ".";
      case NOT_YET -> "says what to do while nothing allows.";
      case HOLD -> "holds.";
      case ESCALATE -> "calls for somebody else.";
    };
  }

  private static String because(Reason reason) {
    return reason.because().map(b -> " " + b).orElse("");
  }

  private String whichOf(String setAside) {
    return rule(setAside).map(Rule::which).stream()
        .flatMap(names -> names.stream().sorted())
        .map(name -> "`" + name + "`")
        .collect(Collectors.joining(" and "));
  }

  private Optional<Rule> rule(String name) {
    return question.question().rule(name);
  }

  private List<String> setAside() {
    return decision.reasons().stream()
        .filter(Reason::setAside)
        .map(r -> "`" + r.rule() + "` does not count here: " + takers(r.rule()))
        .toList();
  }

  private String takers(String allow) {
    List<String> sure =
        decision.reasons().stream()
            .filter(r -> r.effect() == Effect.SET_ASIDE)
            .map(Reason::rule)
            .filter(name -> rule(name).map(r -> r.which().contains(allow)).orElse(false))
            .map(name -> "`" + name + "`")
            .toList();
    return sure.isEmpty()
        ? "whatever is still unknown, one rule or another takes its force."
        : String.join(" and ", sure)
            + (sure.size() == 1 ? " takes its force." : " take its force.");
  }

  private List<String> open() {
    if (decision.settled()) {
      return List.of("Nothing that is not known could change the answer.");
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "It could still become: "
            + decision.possible().stream()
                .sorted(Comparator.naturalOrder())
                .map(question.question()::word)
                .collect(Collectors.joining(", or "))
            + ".");
    decision.ask().forEach(n -> lines.add("Not known: " + n.asks()));
    return lines;
  }

  private List<String> answer() {
    List<String> lines = new ArrayList<>();
    lines.add(decision.asks() + " " + decision.word() + ".");
    lines.add(decision.kind().sentence());
    decision.next().forEach(n -> lines.add("Next: " + n));
    decision.call().forEach(c -> lines.add("Call: " + c.who() + "."));
    return lines;
  }

  private List<String> expected() {
    List<String> lines = new ArrayList<>();
    if (differences.isEmpty()) {
      lines.add("Just this: " + worked.expect().word() + ".");
    }
    differences.forEach(d -> lines.add("Not so: " + d + "."));
    worked.why().ifPresent(why -> lines.add("Why, in the words of the case: " + why));
    return lines;
  }
}
