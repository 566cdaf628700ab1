import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Runs two programs in turn and compares the time from start to end. */
public final class StartUp {
  private StartUp() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    int runs = Integer.parseInt(args[0]);
    Path bare = Path.of(args[1]);
    Path cache = Files.createTempDirectory("start-up");
    List<String> ours =
        List.of(
            "cli/target/tidemark",
            "check",
            "--findings",
            "policies/examples/clear-check.yaml",
            "--json");
    List<String> theirs =
        List.of(bare + "/tidemark", "check", "--findings", bare + "/rules.yaml", "--json");
    for (int i = 0; i < 2; i++) {
      time(ours, cache);
      time(theirs, cache);
    }
    double[] mine = new double[runs];
    double[] other = new double[runs];
    for (int i = 0; i < runs; i++) {
      mine[i] = time(ours, cache);
      other[i] = time(theirs, cache);
    }
    report("tidemark", mine);
    report("bare    ", other);
    System.out.printf(
        Locale.ROOT,
        "ratio     median %.2f   fastest %.2f%n",
        middle(mine) / middle(other),
        mine[0] / other[0]);
  }

  private static double time(List<String> command, Path cache)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long start = System.nanoTime();
    int code = builder.start().waitFor();
    double took = (System.nanoTime() - start) / 1e6;
    if (code != 0) {
      throw new IllegalStateException(command + " ended with " + code);
    }
    return took;
  }

  private static double middle(double[] sorted) {
    return sorted[sorted.length / 2];
  }

  private static void report(String name, double[] times) {
    Arrays.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%s  median %4.0f ms   fastest %4.0f ms   slowest %4.0f ms   (%d runs)%n",
        name,
        middle(times),
        times[0],
        times[times.length - 1],
        times.length);
  }
}
