package org.tidemark.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.tidemark.cli.command.Verbs;
import org.tidemark.cli.command.WrongCommandLine;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Runs one command line. */
final class Program {
  private Program() {}

  /** Runs it and returns the number of an {@link ExitCode}. */
  static int run(Console console, String... args) {
    RootCommand root = new RootCommand();
    Fault fault = new Fault(root);
    // A task keeps whatever goes wrong in it, errors of the machine too, such as too little memory.
    FutureTask<Integer> task =
        new FutureTask<>(() -> commandLine(root, fault, console, args).execute(args));
    task.run();
    int code;
    try {
      code = task.get();
    } catch (ExecutionException wrong) {
      code = fault.report(wrong.getCause() == null ? wrong : wrong.getCause(), console.err());
    } catch (InterruptedException stopped) {
      code = fault.report(stopped, console.err());
    }
    console.out().flush();
    console.err().flush();
    return code;
  }

  private static CommandLine commandLine(
      RootCommand root, Fault fault, Console console, String... args) {
    CommandLine line = new CommandLine(root);
    Verbs.add(line, console, args);
    line.setOut(console.out()).setErr(console.err());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setParameterExceptionHandler(new WrongCommandLine());
    line.setExecutionExceptionHandler(fault);
    ends(line);
    line.getSubcommands().values().forEach(Program::ends);
    return line;
  }

  private static void ends(CommandLine line) {
    line.getCommandSpec()
        .exitCodeOnInvalidInput(ExitCode.COMMAND_LINE_WRONG.number())
        .exitCodeOnExecutionException(ExitCode.INTERNAL_FAULT.number());
    line.getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(codes());
  }

  private static Map<String, String> codes() {
    Map<String, String> codes = new LinkedHashMap<>();
    for (ExitCode code : ExitCode.values()) {
      codes.put(Integer.toString(code.number()), code.meaning());
    }
    return codes;
  }
}
