package org.tidemark.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidemark.Asked;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.PolicyOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.cli.output.Terminal;
import org.tidemark.count.Derived;
import org.tidemark.count.Deriving;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Grounds;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Findings;
import org.tidemark.report.DecisionJson;
import org.tidemark.report.DecisionText;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Answers a question of a policy. */
@Command(
    name = "check",
    description = {
      "Answers a question of a policy: may anything go down this tube now, or may a tube be passed?",
      "On a terminal it asks for what can still change the answer, and for nothing else.",
      "With --findings it asks nothing."
    },
    footer = {
      "",
      "Whatever is not in the findings counts as not known, and nothing unknown ever proceeds.",
      "Nothing is kept: close the window and the findings are gone.",
      "",
      "Examples:",
      "  tidemark check",
      "  tidemark check --question pass",
      "  tidemark check --findings findings.yaml --json",
      "  tidemark check --findings findings.yaml --to-settle",
      "  tidemark check --policy our-policies/adult-wards --findings findings.yaml"
    })
final class CheckCommand extends Verb {
  @Option(
      names = "--question",
      paramLabel = "QUESTION",
      description = {
        "use: may anything go down this tube now? pass: may a tube be passed?",
        "Without it: the question in the file of findings, or else use."
      })
  private @Nullable String question;

  @Mixin private final PolicyOptions policies = new PolicyOptions();

  @Option(
      names = "--findings",
      paramLabel = "FILE",
      description = {
        "What is known, as YAML or JSON: findings alone, or under `findings:` beside `question:`",
        "and `record:`, what was written of the tube more than once.",
        "Without it, on a terminal: asked one at a time."
      })
  private @Nullable Path file;

  @Option(
      names = "--to-settle",
      description = {
        "For an unfinished case: the fewest findings that would settle it whatever they show, and",
        "one way to each answer that is still possible."
      })
  private boolean toSettle;

  @Option(names = "--sources", description = "Names the publication behind each citation.")
  private boolean sources;

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  @Mixin private final Today today = new Today();

  CheckCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    if (file == null && console().terminal().isEmpty()) {
      return wrong("There is no terminal to ask at. Give the findings in a file: --findings FILE");
    }
    Tidemark tidemark = policies.tidemark();
    Loaded<EffectivePolicy> policy = policies.policy(tidemark);
    return policy.match(
        p -> {
          remark(policy.diagnostics(), json);
          return file == null ? interview(tidemark, p) : fromFile(tidemark, p, file);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode fromFile(Tidemark tidemark, EffectivePolicy policy, Path path) {
    Loaded<Asked> findings = tidemark.findings(path, policy);
    return findings.match(
        asked -> {
          remark(findings.diagnostics(), json);
          return answer(tidemark, policy, asked);
        },
        broken -> console().refuse(broken, json, ExitCode.FINDINGS_BROKEN));
  }

  private ExitCode answer(Tidemark tidemark, EffectivePolicy policy, Asked asked) {
    Optional<String> typed = Optional.ofNullable(question);
    if (typed.isPresent() && asked.question().isPresent() && !typed.equals(asked.question())) {
      return wrong(
          "The file asks `"
              + asked.question().get()
              + "` and --question asks `"
              + typed.get()
              + "`. Ask one of them.");
    }
    String name = typed.or(asked::question).orElse("use");
    return tidemark
        .bedside(policy, name)
        .match(
            decider -> answer(tidemark, policy, asked, decider),
            refused -> console().refuse(refused, json, ExitCode.COMMAND_LINE_WRONG));
  }

  private ExitCode answer(Tidemark tidemark, EffectivePolicy policy, Asked asked, Decider decider) {
    return Deriving.of(policy)
        .derive(asked.findings(), asked.record())
        .match(
            derived -> show(tidemark, policy, decider, derived),
            broken -> console().refuse(broken, json, ExitCode.FINDINGS_BROKEN));
  }

  private ExitCode interview(Tidemark tidemark, EffectivePolicy policy) {
    return tidemark
        .bedside(policy, question == null ? "use" : question)
        .match(
            decider -> show(tidemark, policy, decider, Derived.of(interview(policy, decider))),
            refused -> console().refuse(refused, json, ExitCode.COMMAND_LINE_WRONG));
  }

  private Findings interview(EffectivePolicy policy, Decider decider) {
    Terminal terminal = console().terminal().orElseThrow();
    LocalDate day = today.day();
    return new Interview(
            terminal, json ? console().err() : console().out(), policy, f -> decider.decide(f, day))
        .run();
  }

  private ExitCode show(
      Tidemark tidemark, EffectivePolicy policy, Decider decider, Derived derived) {
    Optional<Bibliography> known = Optional.empty();
    if (sources) {
      Loaded<Bibliography> bibliography = tidemark.bibliography();
      known = bibliography.match(Optional::of, broken -> Optional.empty());
      if (known.isEmpty()) {
        return console().refuse(bibliography.diagnostics(), json, ExitCode.POLICY_BROKEN);
      }
    }
    Findings findings = derived.findings();
    Decision decision =
        decider.decide(findings, today.day()).alongside(derived.notCounted(), derived.due());
    Grounds plain = decider.grounds(findings, decision, today.day());
    Grounds grounds = toSettle ? plain.with(decider.routes(findings, today.day())) : plain;
    console()
        .answer(
            json
                ? DecisionJson.of(decision, grounds, known, remarks())
                : DecisionText.of(decision, grounds, policy.vocabulary(), known));
    return ExitCode.DONE;
  }
}
