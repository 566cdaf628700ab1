package org.tidemark.cli.command;

import java.util.List;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.PolicyOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.guide.FilledArticle;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.report.ArticleJson;
import org.tidemark.report.ArticleText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints one article of the guidance. */
@Command(
    name = "read",
    description = {
      "Prints one article of the guidance in full, with the policy's own numbers in it and the sources of what it says.",
      "The verb find gives the names of articles."
    },
    footer = {"", "Examples:", "  tidemark read no-aspirate", "  tidemark read ph-cutoff --json"})
final class ReadCommand extends Verb {
  @Parameters(paramLabel = "ARTICLE", description = "The article's name, as find shows it.")
  private String name = "";

  @Mixin private final PolicyOptions policies = new PolicyOptions();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  ReadCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = policies.tidemark();
    Loaded<EffectivePolicy> policy = policies.policy(tidemark);
    return policy.match(
        p -> {
          remark(policy.diagnostics(), json);
          return read(tidemark, p);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode read(Tidemark tidemark, EffectivePolicy policy) {
    return tidemark
        .article(policy, name)
        .match(article -> show(tidemark, policy, article), this::none);
  }

  private ExitCode show(Tidemark tidemark, EffectivePolicy policy, FilledArticle article) {
    return tidemark
        .bibliography()
        .match(
            sources -> show(policy, article, sources),
            broken -> console().refuse(broken, json, ExitCode.POLICY_BROKEN));
  }

  private ExitCode show(EffectivePolicy policy, FilledArticle article, Bibliography sources) {
    console()
        .answer(
            json
                ? ArticleJson.of(article, policy, sources, remarks())
                : ArticleText.of(article, policy, sources));
    return ExitCode.DONE;
  }

  /** A name that no article has is nothing found; anything else is broken content. */
  private ExitCode none(List<Diagnostic> diagnostics) {
    boolean unknown =
        diagnostics.size() == 1 && diagnostics.get(0).code() == DiagnosticCode.UNKNOWN_WORD;
    return console()
        .refuse(diagnostics, json, unknown ? ExitCode.NOTHING_FOUND : ExitCode.POLICY_BROKEN);
  }
}
