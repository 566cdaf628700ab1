package org.tidemark.policies;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Measures what is promised of answers and proofs, each against a reference in the same run. Not a
 * test: a figure depends on the machine, so every line gives the ratio too.
 *
 * <p>{@code mvn -B -q -Pbench -DskipTests -Djmh.skip -pl policies -am verify -Dmeasure=tables};
 * without a name, everything.
 */
public final class Measure {
  private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private static final Map<String, Runnable> PARTS = new LinkedHashMap<>();

  static {
    PARTS.put("decisions", Decisions::measure);
    PARTS.put("unfinished", Unfinished::measure);
    PARTS.put("hostile", Hostile::measure);
    PARTS.put("claims", ClaimSets::measure);
    PARTS.put("shaped", Shaped::measure);
    PARTS.put("tables", Tables::measure);
  }

  private Measure() {}

  static void line(String format, Object... values) {
    OUT.println(String.format(Locale.ROOT, format, values));
  }

  /** Runs the named parts. */
  public static void main(String[] names) {
    line(
        "Java %s, %d processors, %s",
        Runtime.version(),
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("os.arch"));
    for (Map.Entry<String, Runnable> part : PARTS.entrySet()) {
      if (names.length == 0 || names[0].isBlank() || names[0].equals(part.getKey())) {
        line("%n== %s", part.getKey());
        part.getValue().run();
      }
    }
  }
}
