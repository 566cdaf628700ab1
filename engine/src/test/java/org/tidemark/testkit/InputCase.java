package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One case of a case file: settings, and named parts of text.
 *
 * @param name what it is about
 * @param settings such as {@code as: findings}
 * @param parts the texts behind {@code --- name}
 */
public record InputCase(String name, Map<String, String> settings, Map<String, String> parts) {
  public InputCase {
    settings = Map.copyOf(settings);
    parts = Map.copyOf(parts);
  }

  /** The cases of a file; what stands above the first {@code ===} is for its readers. */
  public static List<InputCase> parse(String file) {
    List<InputCase> cases = new ArrayList<>();
    String[] pieces = ("\n" + file).split("\n=== ", -1);
    for (int i = 1; i < pieces.length; i++) {
      cases.add(one(pieces[i]));
    }
    return cases;
  }

  private static InputCase one(String piece) {
    String[] sections = piece.split("\n--- ", -1);
    List<String> head = sections[0].lines().toList();
    Map<String, String> settings = new LinkedHashMap<>();
    for (String line : head.subList(1, head.size())) {
      int colon = line.indexOf(':');
      if (colon > 0) {
        settings.put(line.substring(0, colon), line.substring(colon + 1).strip());
      }
    }
    Map<String, String> parts = new LinkedHashMap<>();
    for (int i = 1; i < sections.length; i++) {
      int end = sections[i].indexOf('\n');
      String name = (end < 0 ? sections[i] : sections[i].substring(0, end)).strip();
      parts.put(name, end < 0 ? "" : sections[i].substring(end + 1) + "\n");
    }
    return new InputCase(head.get(0).strip(), settings, parts);
  }

  public String setting(String wanted, String otherwise) {
    return settings.getOrDefault(wanted, otherwise);
  }

  public String part(String wanted) {
    String text = parts.get(wanted);
    if (text == null) {
      throw new IllegalArgumentException("the case '" + name + "' has no part '" + wanted + "'");
    }
    return text;
  }
}
