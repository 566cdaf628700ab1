package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Finds the texts of a policy that people read, wherever they stand in the file. */
final class ProseTexts {
  private static final Set<String> KEYS =
      Set.of(
          "title",
          "by-hand",
          "asks",
          "why",
          "because",
          "says",
          "does-not-rule-out",
          "next",
          "done-by",
          "when",
          "who",
          "do",
          "never",
          "then",
          "items",
          "fields",
          "not-stated");

  /**
   * A text that people read.
   *
   * @param key the field that it stands in
   * @param text the text
   */
  record Prose(String key, YamlText text) {}

  private final List<Prose> found = new ArrayList<>();

  private ProseTexts() {}

  static List<Prose> in(YamlNode root) {
    ProseTexts texts = new ProseTexts();
    texts.look(root, "");
    return List.copyOf(texts.found);
  }

  private void look(YamlNode node, String key) {
    if (node instanceof YamlMap map) {
      map.entries().forEach(e -> look(e.value(), e.key().text()));
    } else if (node instanceof YamlList list) {
      list.items().forEach(item -> look(item, key));
    } else if (KEYS.contains(key) && node instanceof YamlText text) {
      found.add(new Prose(key, text));
    }
  }
}
