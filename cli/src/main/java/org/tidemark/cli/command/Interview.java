package org.tidemark.cli.command;

import java.io.PrintWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tidemark.cli.output.Terminal;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Need;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Header;
import org.tidemark.report.QuestionText;

/**
 * Asks for what can still change the answer, one finding at a time, until the answer is settled or
 * nobody knows more. Whatever stays unknown only makes the answer more cautious.
 */
final class Interview {
  private final Terminal terminal;
  private final PrintWriter out;
  private final EffectivePolicy policy;
  private final Function<Findings, Decision> decide;
  private final Deque<Known> before = new ArrayDeque<>();
  private Known known = new Known(Findings.NONE, Set.of());

  Interview(
      Terminal terminal,
      PrintWriter out,
      EffectivePolicy policy,
      Function<Findings, Decision> decide) {
    this.terminal = terminal;
    this.out = out;
    this.policy = policy;
    this.decide = decide;
  }

  /** What was said so far: what is known, and what nobody knows. */
  private record Known(Findings findings, Set<String> notKnown) {
    Known skipping(String finding) {
      Set<String> more = new HashSet<>(notKnown);
      more.add(finding);
      return new Known(findings, more);
    }

    Known with(String finding, Findings.Entry entry) {
      return new Known(findings.with(finding, entry), notKnown);
    }
  }

  /** Asks, and ends with what is known. */
  Findings run() {
    Decision decision = decide.apply(known.findings());
    begin(decision);
    Optional<Need> next = open(decision);
    while (next.isPresent() && ask(next.get())) {
      decision = decide.apply(known.findings());
      next = open(decision);
    }
    out.println();
    return known.findings();
  }

  private Optional<Need> open(Decision decision) {
    return decision.settled()
        ? Optional.empty()
        : decision.ask().stream().filter(n -> isToBeAsked(n, decision)).findFirst();
  }

  /** A reading that may be off stays open whatever it is, and is not asked for again. */
  private boolean isToBeAsked(Need need, Decision decision) {
    return !known.notKnown().contains(need.finding()) && decision.countsAs(need).isEmpty();
  }

  private void begin(Decision decision) {
    Header header = policy.header();
    out.println(header.title() + ", " + header.owner() + ", edition " + header.edition());
    out.println(decision.asks());
    out.println("Type a number or a word. Blank: not known. ?: explain. back, quit.");
  }

  /** Asks until something usable is typed; false when the person wants to stop. */
  private boolean ask(Need need) {
    Finding finding = policy.vocabulary().require(need.finding());
    Answers answers = new Answers(finding);
    out.println();
    out.print(QuestionText.of(finding));
    while (true) {
      String line = prompt();
      if (line == null || line.equals("quit")) {
        return false;
      }
      if (take(line, finding, answers)) {
        return true;
      }
    }
  }

  private @Nullable String prompt() {
    out.print("> ");
    out.flush();
    String line = terminal.readLine();
    return line == null ? null : line.strip().toLowerCase(Locale.ROOT);
  }

  private boolean take(String line, Finding finding, Answers answers) {
    switch (line) {
      case "?" -> {
        out.print(QuestionText.help(finding));
        return false;
      }
      case "back" -> {
        return back();
      }
      case "" -> {
        remember(known.skipping(finding.name()));
        return true;
      }
      default -> {
        return answers
            .read(line)
            .match(
                entry -> {
                  remember(known.with(finding.name(), entry));
                  return true;
                },
                problems -> {
                  problems.forEach(p -> out.print(p.render()));
                  return false;
                });
      }
    }
  }

  private void remember(Known now) {
    before.push(known);
    known = now;
  }

  private boolean back() {
    if (before.isEmpty()) {
      out.println("This is the first question.");
      return false;
    }
    known = before.pop();
    return true;
  }
}
