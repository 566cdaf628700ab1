package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tidemark.cli.output.ExitCode;
import picocli.CommandLine;

/** The way in; the only class that touches the process's own streams and its exit. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.exit(run(writer(System.out), writer(System.err), args));
  }

  /** Runs one command line and returns the number of an {@link ExitCode}. */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    int code = commandLine(out, err).execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new RootCommand()).setOut(out).setErr(err);
    line.getCommandSpec()
        .exitCodeOnInvalidInput(ExitCode.COMMAND_LINE_WRONG.number())
        .exitCodeOnExecutionException(ExitCode.INTERNAL_FAULT.number());
    line.getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(codes());
    return line;
  }

  private static Map<String, String> codes() {
    Map<String, String> codes = new LinkedHashMap<>();
    for (ExitCode code : ExitCode.values()) {
      codes.put(Integer.toString(code.number()), code.meaning());
    }
    return codes;
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, UTF_8), true);
  }
}
