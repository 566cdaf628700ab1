package org.tidemark.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The small tables of the house: a name, a colon, and words; a line that starts with # is a remark.
 */
final class Tables {
  private Tables() {}

  static Map<String, List<String>> read(String resource) {
    Map<String, List<String>> table = new LinkedHashMap<>();
    text(resource).lines().filter(Tables::says).forEach(line -> enter(line, table));
    return table;
  }

  private static boolean says(String line) {
    return !line.isBlank() && !line.startsWith("#");
  }

  private static void enter(String line, Map<String, List<String>> table) {
    int colon = line.indexOf(':');
    List<String> words =
        Arrays.stream(line.substring(colon + 1).split(" ", -1)).filter(w -> !w.isEmpty()).toList();
    if (table.put(line.substring(0, colon), words) != null) {
      throw new IllegalArgumentException("said twice: " + line);
    }
  }

  private static String text(String resource) {
    try (InputStream in = Tables.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no such table: " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
