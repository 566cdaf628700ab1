package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tidemark.cli.output.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** A fault of the program: one line, never an answer, and the details only in a file asked for. */
final class Fault implements IExecutionExceptionHandler {
  private static final String ASK =
      "Please report it; with --fault-file FILE before the verb, details are kept.";

  private final RootCommand root;

  Fault(RootCommand root) {
    this.root = root;
  }

  @Override
  public int handleExecutionException(Exception fault, CommandLine line, ParseResult parsed) {
    return report(fault, line.getErr());
  }

  /** Says so in one line. */
  int report(Throwable fault, PrintWriter err) {
    String kind = fault.getClass().getSimpleName();
    err.println(
        "tidemark: a fault of the program itself ("
            + kind
            + "). It gave no answer. "
            + root.faultFile().map(file -> kept(fault, file)).orElse(ASK));
    return ExitCode.INTERNAL_FAULT.number();
  }

  private static String kept(Throwable fault, Path file) {
    try (PrintWriter details = new PrintWriter(Files.newBufferedWriter(file, UTF_8))) {
      fault.printStackTrace(details);
      return "Please report it with the details in " + file + ".";
    } catch (IOException notWritten) {
      return "Please report it. The details could not be written to " + file + ".";
    }
  }
}
