package org.tidemark.yaml;

import java.util.List;
import org.tidemark.source.Span;

/**
 * A list.
 *
 * @param items in the order of the text
 * @param span where
 */
public record YamlList(List<YamlNode> items, Span span) implements YamlNode {
  public YamlList {
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "a list";
  }
}
