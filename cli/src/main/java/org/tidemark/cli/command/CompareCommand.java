package org.tidemark.cli.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Prover;
import org.tidemark.report.ProofsJson;
import org.tidemark.report.ProofsText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two editions of a policy. */
@Command(
    name = "compare",
    description = {
      "Compares two editions of a policy over every case there can be: which cases are answered differently, by which rule, each with an example.",
      "Where nothing is answered differently, that is proved."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark compare old/policy.yaml new/policy.yaml",
      "  tidemark compare example-general-adult our-policies/ward-adult --json"
    })
final class CompareCommand extends Verb {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Parameters(
      index = "0",
      paramLabel = "WAS",
      description = "The earlier edition: a name or a path.")
  private String was = "";

  @Parameters(index = "1", paramLabel = "IS", description = "The later edition: a name or a path.")
  private String is = "";

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  CompareCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = folders.tidemark();
    Loaded<EffectivePolicy> before = tidemark.policy(was);
    return before.match(
        earlier -> {
          Loaded<EffectivePolicy> after = tidemark.policy(is);
          return after.match(
              later -> {
                remark(both(before, after), json);
                return compare(earlier, later);
              },
              broken -> noPolicy(broken, json));
        },
        broken -> noPolicy(broken, json));
  }

  /** What both editions say of the same floor is said once. */
  private static List<Diagnostic> both(Loaded<?> before, Loaded<?> after) {
    Map<String, Diagnostic> said = new LinkedHashMap<>();
    Stream.concat(before.diagnostics().stream(), after.diagnostics().stream())
        .forEach(d -> said.putIfAbsent(d.render(), d));
    return List.copyOf(said.values());
  }

  private ExitCode compare(EffectivePolicy before, EffectivePolicy after) {
    Comparison comparison = Comparison.of(before, after, Prover.BUDGET);
    console()
        .answer(
            json
                ? ProofsJson.of(before, after, comparison, remarks())
                : ProofsText.of(before, after, comparison));
    return comparison.settled() ? ExitCode.DONE : ExitCode.UNDECIDED;
  }
}
