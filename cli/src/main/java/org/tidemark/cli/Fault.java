package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.tidemark.cli.output.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** A fault of the program: one line, never an answer, and the details only in a file asked for. */
final class Fault implements IExecutionExceptionHandler {
  private final RootCommand root;

  Fault(RootCommand root) {
    this.root = root;
  }

  @Override
  public int handleExecutionException(Exception fault, CommandLine line, ParseResult parsed)
      throws IOException {
    String kind = fault.getClass().getSimpleName();
    line.getErr()
        .println(
            "tidemark: a fault of the program itself (" + kind + "). It gave no answer. " + ask());
    Optional<Path> file = root.faultFile();
    if (file.isPresent()) {
      try (PrintWriter details = new PrintWriter(Files.newBufferedWriter(file.get(), UTF_8))) {
        fault.printStackTrace(details);
      }
    }
    return ExitCode.INTERNAL_FAULT.number();
  }

  private String ask() {
    return root.faultFile()
        .map(file -> "Please report it with the details in " + file + ".")
        .orElse("Please report it; with --fault-file FILE before the verb, details are kept.");
  }
}
