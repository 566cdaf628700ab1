package org.tidemark.load;

import java.util.Set;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** An empty list in a policy says nothing, and hides that something was meant to stand there. */
final class EmptyLists {
  /** Where nothing is a choice, or is explained by whoever reads it. */
  private static final Set<String> READ_ELSEWHERE = Set.of("counts", "given", "any-of", "some-of");

  private EmptyLists() {}

  static void check(YamlNode node, String name, Problems problems) {
    if (node instanceof YamlMap map) {
      map.entries().stream()
          .filter(e -> !READ_ELSEWHERE.contains(e.key().text()))
          .forEach(e -> check(e.value(), e.key().text(), problems));
    } else if (node instanceof YamlList list && list.items().isEmpty()) {
      problems.add(Fields.emptyList(list, "`" + name + "`"));
    } else if (node instanceof YamlList list) {
      list.items().forEach(item -> check(item, name, problems));
    }
  }
}
