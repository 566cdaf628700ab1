package org.tidemark.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What every verb has: help, a console, and a way to end. */
@Command(
    sortOptions = false,
    usageHelpAutoWidth = false,
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nWhat to give:%n",
    synopsisHeading = "%nUsage: ",
    descriptionHeading = "%n")
abstract class Verb implements Callable<Integer> {
  @SuppressWarnings("unused") // picocli reads it
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Shows this help and ends.")
  private boolean help;

  private final Console console;
  private final List<Diagnostic> remarks = new ArrayList<>();

  Verb(Console console) {
    this.console = console;
  }

  @Override
  public final Integer call() {
    return run().number();
  }

  abstract ExitCode run();

  Console console() {
    return console;
  }

  /**
   * Takes note of what there is to say beside an answer: for people now, for programs in it. What
   * was accepted is told only where somebody looks at the policy itself.
   */
  void remark(List<Diagnostic> said, boolean json) {
    remarks.addAll(said);
    console.remarks(
        json ? List.of() : said.stream().filter(remark -> !remark.isAccepted()).toList());
  }

  List<Diagnostic> remarks() {
    return List.copyOf(remarks);
  }

  /** Why there is no policy: a name that nobody knows is a slip in the command line. */
  ExitCode noPolicy(List<Diagnostic> diagnostics, boolean json) {
    boolean unknown = diagnostics.stream().anyMatch(d -> d.code() == DiagnosticCode.UNKNOWN_POLICY);
    return console.refuse(
        diagnostics, json, unknown ? ExitCode.COMMAND_LINE_WRONG : ExitCode.POLICY_BROKEN);
  }

  /** What is wrong with the command line, and where to look. */
  ExitCode wrong(String message) {
    String name = getClass().getAnnotation(Command.class).name();
    console.err().println(message);
    console.err().println("Try: tidemark " + name + " --help");
    return ExitCode.COMMAND_LINE_WRONG;
  }
}
