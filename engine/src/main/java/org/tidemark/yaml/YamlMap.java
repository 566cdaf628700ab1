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
    for (Entry entry : entries) {
      if (entry.key().text().equals(key)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }

  @Override
  public String kind() {
    return "named fields";
  }
}
