package org.tidemark.cli.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.source.Suggestion;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line in two lines: the fault, and what to type instead. */
public final class WrongCommandLine implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException wrong, String[] args) {
    CommandLine line = wrong.getCommandLine();
    PrintWriter err = line.getErr();
    Optional<String> unknown = unknown(wrong);
    err.println(
        unknown.map(word -> "`" + word + "` is not known here.").orElse(wrong.getMessage()));
    unknown
        .flatMap(word -> Suggestion.nearest(word, known(line)))
        .ifPresent(near -> err.println("Did you mean: " + near));
    err.println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.COMMAND_LINE_WRONG.number();
  }

  private static Optional<String> unknown(ParameterException wrong) {
    return wrong instanceof UnmatchedArgumentException unmatched
        ? unmatched.getUnmatched().stream().findFirst()
        : Optional.empty();
  }

  private static List<String> known(CommandLine line) {
    List<String> known = new ArrayList<>(line.getSubcommands().keySet());
    known.addAll(line.getCommandSpec().optionsMap().keySet());
    return known;
  }
}
