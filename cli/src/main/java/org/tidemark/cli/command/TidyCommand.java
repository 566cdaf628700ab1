package org.tidemark.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.Tidemark;
import org.tidemark.Tidied;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.report.TidyJson;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays files out. */
@Command(
    name = "tidy",
    description = {
      "Lays a policy, worked cases, findings, a vocabulary or a bibliography out in one way, and keeps every comment.",
      "What was laid out is read again before it is written: it must mean the same. A file with an error in it stays as it is."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark tidy our-policies/ward-adult/policy.yaml",
      "  tidemark tidy our-policies/ward-adult/policy.yaml our-policies/ward-adult/cases.yaml"
    })
final class TidyCommand extends Verb {
  @Parameters(arity = "1..*", paramLabel = "FILE", description = "The files to lay out.")
  private final List<Path> files = new ArrayList<>();

  @Mixin private final FolderOptions folders = new FolderOptions();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  private final List<Diagnostic> problems = new ArrayList<>();
  private final List<Path> written = new ArrayList<>();
  private final List<Path> same = new ArrayList<>();

  TidyCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = folders.tidemark();
    for (Path file : files) {
      Loaded<Tidied> tidied = tidemark.tidy(file);
      tidied.match(done -> (done.changed() ? written : same).add(file), problems::addAll);
    }
    if (!problems.isEmpty()) {
      written.forEach(file -> console().err().println("Laid out: " + file));
      return console().refuse(problems, json, ExitCode.POLICY_BROKEN);
    }
    console().answer(json ? TidyJson.of(written, same) : text());
    return ExitCode.DONE;
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    written.forEach(file -> text.append("Laid out: ").append(file).append('\n'));
    same.forEach(file -> text.append("Laid out already: ").append(file).append('\n'));
    return text.toString();
  }
}
