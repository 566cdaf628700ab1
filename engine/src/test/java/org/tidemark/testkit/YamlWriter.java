package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes maps, lists and texts as YAML, in blocks or braces, quoted or plain, in any order. */
final class YamlWriter {
  private final Random random;
  private final StringBuilder out = new StringBuilder();

  YamlWriter(Random random) {
    this.random = random;
  }

  String document(Map<String, Object> root) {
    entries(root, 0);
    return out.toString();
  }

  private void entries(Map<?, ?> map, int indent) {
    for (Map.Entry<?, ?> entry : inAnyOrder(map)) {
      out.append(" ".repeat(indent)).append(entry.getKey()).append(':');
      value(entry.getValue(), indent);
    }
  }

  private void value(Object value, int indent) {
    boolean braces = value instanceof String || random.nextInt(3) == 0;
    if (braces) {
      out.append(' ').append(inline(value)).append('\n');
    } else if (value instanceof Map<?, ?> map) {
      out.append('\n');
      entries(map, indent + 2);
    } else if (value instanceof List<?> list) {
      out.append('\n');
      for (Object item : list) {
        out.append(" ".repeat(indent + 2)).append('-');
        value(item, indent + 2);
      }
    } else {
      throw new IllegalArgumentException("no map, list or text: " + value);
    }
  }

  private String inline(Object value) {
    if (value instanceof Map<?, ?> map) {
      return inAnyOrder(map).stream()
          .map(e -> e.getKey() + ": " + inline(e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    return value instanceof List<?> list
        ? list.stream().map(this::inline).collect(Collectors.joining(", ", "[", "]"))
        : scalar((String) value);
  }

  private String scalar(String text) {
    boolean plain = text.matches("[A-Za-z][a-z-]*|[0-9]+(\\.[0-9]+)?|\\d{4}-\\d\\d-\\d\\d");
    boolean word = text.equals("yes") || text.equals("no");
    if (plain && !word && random.nextInt(4) > 0) {
      return text;
    }
    return plain || random.nextBoolean()
        ? '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"'
        : "'" + text.replace("'", "''") + "'";
  }

  private List<Map.Entry<?, ?>> inAnyOrder(Map<?, ?> map) {
    // Sorted first: a seed must not hang on the order of an immutable map.
    Map<String, Object> sorted = new TreeMap<>();
    map.forEach((k, v) -> sorted.put((String) k, v));
    List<Map.Entry<?, ?>> entries = new ArrayList<>(sorted.entrySet());
    Collections.shuffle(entries, random);
    return entries;
  }
}
