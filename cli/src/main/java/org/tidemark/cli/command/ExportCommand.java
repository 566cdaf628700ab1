package org.tidemark.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidemark.FileKind;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Worded;
import org.tidemark.report.DmnExport;
import org.tidemark.report.DmnJson;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a policy, or what policies are made of, in a form that other programs read. */
@Command(
    name = "export",
    description = {
      "Writes a policy as decision tables in DMN 1.3, an open standard of the OMG, for programs that read those.",
      "The tables are a copy, and answer only when everything is known: whatever is missing never proceeds.",
      "Nothing is exported from a floor.",
      "Or writes the JSON Schema of a kind of file, so that an editor completes and checks while you type."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark export --dmn",
      "  tidemark export example-general-adult --dmn --question use -o use.dmn",
      "  tidemark export --schema policy -o policy.schema.json"
    })
final class ExportCommand extends Verb {
  @Parameters(
      arity = "0..1",
      paramLabel = "POLICY",
      description = {
        "A name from the verb policies, or the path of a policy's file or folder.",
        "Without it: the invented hospital's policy that is shipped as an example."
      })
  private @Nullable String policy;

  @Mixin private final FolderOptions folders = new FolderOptions();

  @Option(names = "--dmn", description = "As decision tables in DMN 1.3, which is XML.")
  private boolean dmn;

  @Option(
      names = "--schema",
      paramLabel = "KIND",
      description = {
        "The JSON Schema of a kind of file, with the words of the vocabulary:",
        "policy, cases, findings, vocabulary or bibliography. It takes no POLICY."
      })
  private @Nullable String schema;

  @Option(
      names = "--question",
      paramLabel = "QUESTION",
      description = "One question, such as use. Without it: all.")
  private @Nullable String question;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE",
      description = "Where to write it. Without it: the output.")
  private @Nullable Path out;

  @Option(names = "--replace", description = "Writes over a file that is there.")
  private boolean replace;

  @Option(names = "--json", description = "Writes JSON: what was exported.")
  private boolean json;

  ExportCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    if (dmn == (schema != null)) {
      return wrong("Say in which form: --dmn or --schema.");
    }
    if (schema != null) {
      return schema(schema);
    }
    Tidemark tidemark = folders.tidemark();
    Loaded<EffectivePolicy> read = policy == null ? tidemark.demo() : tidemark.policy(policy);
    return read.match(
        effective -> {
          remark(read.diagnostics(), json);
          return export(tidemark, effective);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode schema(String typed) {
    Optional<FileKind> kind = Worded.find(FileKind.class, typed);
    if (kind.isEmpty() || policy != null || question != null || json) {
      return wrong(
          "--schema goes with -o alone, and is one of: "
              + String.join(", ", Worded.words(FileKind.class))
              + ".");
    }
    return folders
        .tidemark()
        .schema(kind.get())
        .match(this::writeSchema, broken -> noPolicy(broken, false));
  }

  private ExitCode writeSchema(String text) {
    if (out == null) {
      console().answer(text);
      return ExitCode.DONE;
    }
    String trouble = new OutFile(out, replace).write(text);
    if (!trouble.isEmpty()) {
      return wrong(trouble);
    }
    console().answer("Wrote " + out + ".\n");
    return ExitCode.DONE;
  }

  private ExitCode export(Tidemark tidemark, EffectivePolicy effective) {
    List<String> names =
        question == null
            ? effective.questions().stream().map(EffectiveQuestion::name).toList()
            : List.of(question);
    for (String name : names) {
      List<Diagnostic> refused =
          tidemark.bedside(effective, name).match(answers -> List.of(), broken -> broken);
      if (!refused.isEmpty()) {
        return console().refuse(refused, json, ExitCode.COMMAND_LINE_WRONG);
      }
    }
    List<EffectiveQuestion> questions =
        names.stream().flatMap(n -> effective.question(n).stream()).toList();
    Optional<String> refused = DmnExport.refused(effective, questions);
    return refused.isPresent()
        ? wrong(refused.get())
        : write(effective, questions, DmnExport.of(effective, questions));
  }

  private ExitCode write(
      EffectivePolicy effective, List<EffectiveQuestion> questions, DmnExport export) {
    if (out == null) {
      String all = DmnJson.of(effective, questions, export, Optional.empty(), remarks());
      console().answer(json ? all : export.xml());
      return ExitCode.DONE;
    }
    String trouble = new OutFile(out, replace).write(export.xml());
    if (!trouble.isEmpty()) {
      return wrong(trouble);
    }
    Optional<String> file = Optional.of(out.toString());
    console()
        .answer(
            json
                ? DmnJson.of(effective, questions, export, file, remarks())
                : "Wrote " + out + ": " + effective.name() + ", code " + export.code() + ".\n");
    return ExitCode.DONE;
  }
}
