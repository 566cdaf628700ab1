package org.tidemark.cli.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.tidemark.cli.output.Console;
import picocli.CommandLine;

/** The verbs. */
public final class Verbs {
  private static final Map<String, Function<Console, Verb>> ALL = all();

  private Verbs() {}

  private static Map<String, Function<Console, Verb>> all() {
    Map<String, Function<Console, Verb>> all = new LinkedHashMap<>();
    all.put("check", CheckCommand::new);
    all.put("find", FindCommand::new);
    all.put("read", ReadCommand::new);
    all.put("card", CardCommand::new);
    all.put("policies", PoliciesCommand::new);
    all.put("prove", ProveCommand::new);
    all.put("compare", CompareCommand::new);
    all.put("sign-off", SignOffCommand::new);
    all.put("trial", TrialCommand::new);
    all.put("export", ExportCommand::new);
    all.put("new", NewCommand::new);
    all.put("tidy", TidyCommand::new);
    return all;
  }

  /**
   * Gives a command line its verbs: the one that is typed first, or else all of them. Reading the
   * options of verbs that nobody typed would only lengthen the start.
   */
  public static void add(CommandLine line, Console console, String... args) {
    String first = args.length == 0 ? "" : args[0];
    ALL.forEach(
        (name, maker) -> {
          if (name.equals(first) || !ALL.containsKey(first)) {
            line.addSubcommand(name, maker.apply(console));
          }
        });
  }
}
