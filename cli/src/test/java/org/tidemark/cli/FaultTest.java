package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.Terminal;

/** A planted fault ends with its own code and one line, whatever kind it is. */
class FaultTest {
  private static final String ASK =
      "Please report it; with --fault-file FILE before the verb, details are kept.\n";

  @TempDir private Path folder = Path.of("target");

  private static Ran planted(Terminal terminal, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(new PrintWriter(out), new PrintWriter(err), Optional.of(terminal));
    int code = Program.run(console, args);
    return new Ran(code, "", err.toString());
  }

  private static Ran said(String kind, String ask) {
    String line = "tidemark: a fault of the program itself (" + kind + "). It gave no answer. ";
    return new Ran(70, "", line + ask);
  }

  @Test
  void anException() {
    Terminal broken =
        () -> {
          throw new IllegalStateException("planted");
        };
    assertEquals(said("IllegalStateException", ASK), planted(broken, "check"));
  }

  @Test
  void anErrorOfTheMachine() {
    Terminal broken =
        () -> {
          throw new StackOverflowError("planted");
        };
    assertEquals(said("StackOverflowError", ASK), planted(broken, "check"));
  }

  @Test
  void detailsAreKeptInAFile() throws IOException {
    Path file = folder.resolve("details.txt");
    Terminal broken =
        () -> {
          throw new StackOverflowError("planted");
        };
    Ran ran = planted(broken, "--fault-file", file.toString(), "check");
    assertEquals(
        said("StackOverflowError", "Please report it with the details in " + file + ".\n"), ran);
    assertTrue(Files.readString(file, UTF_8).contains("FaultTest"), "the stack is in the file");
  }

  @Test
  void detailsThatCannotBeWritten() {
    String nowhere = folder.resolve("none").resolve("details.txt").toString();
    Terminal broken =
        () -> {
          throw new IllegalStateException("planted");
        };
    Ran ran = planted(broken, "--fault-file", nowhere, "check");
    assertEquals(
        said(
            "IllegalStateException",
            "Please report it. The details could not be written to " + nowhere + ".\n"),
        ran);
  }
}
