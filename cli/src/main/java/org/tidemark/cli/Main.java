package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Optional;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.Terminal;
import org.tidemark.cli.output.WordsForSigns;

/** The way in; the only class that touches the process's own streams and its exit. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    // From Java 22 on, a console is there even when nobody sits at it, unless this is said.
    System.setProperty("jdk.console", "java.base");
    System.exit(Program.run(console(), args));
  }

  @SuppressWarnings("SystemConsoleNull") // the property set above keeps it as it was
  private static Console console() {
    java.io.Console person = System.console();
    return person == null
        ? new Console(utf8(System.out), utf8(System.err), Optional.empty())
        : atTerminal(person);
  }

  /** Files and pipes get UTF-8, whatever the machine's settings are. */
  private static PrintWriter utf8(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, UTF_8), false);
  }

  private static Console atTerminal(java.io.Console person) {
    Terminal terminal = person::readLine;
    return new Console(shown(System.out, person), shown(System.err, person), Optional.of(terminal));
  }

  private static PrintWriter shown(PrintStream stream, java.io.Console person) {
    Writer encoded = new OutputStreamWriter(stream, person.charset());
    return new PrintWriter(new WordsForSigns(encoded, person.charset()), false);
  }
}
