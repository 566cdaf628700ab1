package bare;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * What any program with these libraries must pay: options in, YAML in, JSON out, and no thought.
 */
@Command(name = "bare", mixinStandardHelpOptions = true)
public final class Bare implements Runnable {
  @Spec CommandLine.Model.CommandSpec spec;

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    CommandLine line = new CommandLine(new Bare()).addSubcommand(new Check()).setOut(out);
    int code = line.execute(args);
    out.flush();
    System.exit(code);
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "Say what to do.");
  }

  /** Reads a file of rules and prints it. */
  @Command(name = "check", mixinStandardHelpOptions = true)
  static final class Check implements Callable<Integer> {
    @Spec CommandLine.Model.CommandSpec spec;

    @Option(names = "--findings", required = true)
    Path file;

    @Option(names = "--json")
    boolean json;

    @Override
    public Integer call() throws IOException {
      String text = Files.readString(file);
      Object rules = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
      String printed =
          new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(rules);
      spec.commandLine().getOut().println(printed);
      return 0;
    }
  }
}
