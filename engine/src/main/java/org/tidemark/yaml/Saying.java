package org.tidemark.yaml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a tree says, however it is laid out: its texts, the order of its lists and of named things.
 * The order of the fields that a shape knows says nothing.
 *
 * @param content texts, lists and maps
 */
public record Saying(Object content) {

  public static Saying of(YamlNode node, Shape shape) {
    return new Saying(content(node, shape));
  }

  private static Object content(YamlNode node, Shape shape) {
    if (node instanceof YamlText text) {
      return text.text();
    }
    if (node instanceof YamlList list) {
      return list.items().stream().map(item -> content(item, shape.item())).toList();
    }
    List<YamlMap.Entry> entries = ((YamlMap) node).entries();
    Map<String, Object> known = new HashMap<>();
    entries.stream()
        .filter(e -> shape.order().contains(e.key().text()))
        .forEach(e -> known.put(e.key().text(), content(e.value(), shape.of(e.key().text()))));
    List<Object> others =
        entries.stream()
            .filter(e -> !shape.order().contains(e.key().text()))
            .<Object>map(e -> List.of(e.key().text(), content(e.value(), shape.of(e.key().text()))))
            .toList();
    return List.of(known, others);
  }
}
