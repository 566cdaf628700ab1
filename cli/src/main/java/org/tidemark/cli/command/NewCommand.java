package org.tidemark.cli.command;

import java.nio.file.Path;
import java.util.List;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.report.NewPolicyJson;
import org.tidemark.report.NewPolicyText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a blank policy. */
@Command(
    name = "new",
    description = {
      "Writes a blank policy into a folder that does not exist yet, with questions to answer and no clinical value, and lists what is missing."
    },
    footer = {
      "",
      "It writes policy.yaml, cases.yaml and README.md, and never over anything. The folder's name becomes the policy's.",
      "",
      "Examples:",
      "  tidemark new our-policies/ward-adult",
      "  tidemark new our-policies/ward-adult --on floor-england-adult"
    })
final class NewCommand extends Verb {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Parameters(index = "0", paramLabel = "NEW-FOLDER", description = "The folder to make.")
  private Path folder = Path.of("");

  @Option(
      names = "--on",
      paramLabel = "NAME",
      defaultValue = "nothing",
      description = "The policy that it builds on, such as a floor. Without it: nothing.")
  private String on = "nothing";

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  NewCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = folders.tidemark();
    if (!on.equals("nothing")) {
      Loaded<EffectivePolicy> below = tidemark.policy(on);
      boolean sound = below.match(policy -> true, broken -> false);
      if (!sound) {
        return noPolicy(below.diagnostics(), json);
      }
    }
    return tidemark
        .newPolicy(folder, on)
        .match(
            files -> written(tidemark, files),
            refused -> console().refuse(refused, json, ExitCode.COMMAND_LINE_WRONG));
  }

  private ExitCode written(Tidemark tidemark, List<Path> files) {
    List<Diagnostic> missing = tidemark.policy(files.get(0).toString()).diagnostics();
    console().answer(json ? NewPolicyJson.of(files, missing) : NewPolicyText.of(files, missing));
    return ExitCode.DONE;
  }
}
