package org.tidemark.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.cli.output.LongWork;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.report.TrialJson;
import org.tidemark.report.TrialText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Suggestion;
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.Trial;
import org.tidemark.trial.TrialReport;
import org.tidemark.trial.WorkedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tries a policy on its own worked cases. */
@Command(
    name = "trial",
    description = {
      "Tries a policy on its own worked cases: does each get the answer that it must get?",
      "Counts the rules that some case makes fire, and of the readings at a limit and one step beside it those that some case states; lists the"
          + " others, each with its place."
    },
    footer = {
      "",
      "The cases stand in cases.yaml beside the policy. It ends with 1 if a case does not pass.",
      "",
      "Examples:",
      "  tidemark trial example-general-adult",
      "  tidemark trial our-policies/ward-adult --all-covered",
      "  tidemark trial example-general-adult --explain NG-031"
    })
final class TrialCommand extends Verb {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "POLICY",
      description = {
        "A name from the verb policies, or the path of a policy's file or folder.",
        "Without it: the invented hospital's policy that is shipped as an example."
      })
  private @Nullable String policy;

  @Option(
      names = "--cases",
      paramLabel = "FILE",
      description = "The worked cases. Without it: cases.yaml beside the policy.")
  private @Nullable Path cases;

  @Option(
      names = "--explain",
      paramLabel = "CASE",
      description = "Shows step by step how the answer to one case comes about.")
  private @Nullable String explain;

  @Option(
      names = "--all-covered",
      description = "Ends with 1 also if no case reaches some rule, or some reading at a limit.")
  private boolean allCovered;

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  @Mixin private final Today today = new Today();

  TrialCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = folders.tidemark();
    return Optional.ofNullable(policy)
        .map(Loaded::good)
        .orElseGet(tidemark::demoName)
        .match(name -> named(tidemark, name), broken -> noPolicy(broken, json));
  }

  private ExitCode named(Tidemark tidemark, String name) {
    return tidemark
        .policy(name)
        .match(
            effective ->
                cases(tidemark, name, effective)
                    .match(file -> tried(tidemark, effective, file), this::broken),
            broken -> noPolicy(broken, json));
  }

  private Loaded<CaseFile> cases(Tidemark tidemark, String name, EffectivePolicy policy) {
    return cases == null ? tidemark.cases(name, policy) : tidemark.cases(cases, policy);
  }

  private ExitCode broken(List<Diagnostic> diagnostics) {
    return console().refuse(diagnostics, json, ExitCode.POLICY_BROKEN);
  }

  private ExitCode tried(Tidemark tidemark, EffectivePolicy effective, CaseFile file) {
    return tidemark
        .trial(effective)
        .match(
            trial -> explain == null ? all(trial, file) : one(trial, effective, file, explain),
            this::broken);
  }

  private ExitCode all(Trial trial, CaseFile file) {
    LongWork work = new LongWork(console().err(), "cases");
    return trial.report(file, today.day(), work::done).match(this::show, this::broken);
  }

  private ExitCode show(TrialReport report) {
    console().answer(json ? TrialJson.of(report) : TrialText.of(report));
    boolean missing = allCovered && !report.coverage().complete();
    return report.allPass() && !missing ? ExitCode.DONE : ExitCode.NOT_SO;
  }

  private ExitCode one(Trial trial, EffectivePolicy effective, CaseFile file, String name) {
    Optional<WorkedCase> worked = file.named(name);
    if (worked.isEmpty()) {
      List<String> known = file.cases().stream().map(WorkedCase::name).toList();
      return wrong(
          "No case is called `"
              + name
              + "`."
              + Suggestion.nearest(name, known).map(n -> " Did you mean: " + n).orElse(""));
    }
    return trial
        .explain(worked.get(), today.day())
        .match(
            explanation -> {
              console()
                  .answer(
                      json
                          ? TrialJson.of(effective.header(), explanation)
                          : TrialText.of(effective.header(), explanation));
              return explanation.result().passes() ? ExitCode.DONE : ExitCode.NOT_SO;
            },
            this::broken);
  }
}
