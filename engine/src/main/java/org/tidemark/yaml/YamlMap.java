package org.tidemark.yaml;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Span;

/**
 * Named fields. No name stands twice.
 *
 * @param entries in the order of the text
 * @param span where
 */
public record YamlMap(List<Entry> entries, Span span) implements YamlNode {
  /**
   * A field.
   *
   * @param key its name
   * @param value what it holds
   */
  public record Entry(YamlText key, YamlNode value) {}

  public YamlMap {
    entries = List.copyOf(entries);
  }

  public Optional<Entry> entry(String key) {
    return entries.stream().filter(e -> e.key().text().equals(key)).findFirst();
  }

  @Override
  public String kind() {
    return "named fields";
  }
}
