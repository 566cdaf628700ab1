package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedYaml;
import org.tidemark.testkit.Marked;
import org.tidemark.yaml.YamlReader;

/**
 * Our reader beside another one, SnakeYAML Engine 3.0.1, which reads YAML 1.2 and shares no code
 * with the library that ours is built on.
 */
final class DifferentialReaderTest {
  private static final LoadSettings SETTINGS = LoadSettings.builder().build();
  private static final int DOCUMENTS = 1_000;

  @Test
  void bothReadTheSameTree() {
    int lines = 0;
    for (int seed = 0; seed < DOCUMENTS; seed++) {
      String document = GeneratedYaml.document(new Random(seed));
      lines += (int) document.lines().count();
      String other = shown(new Compose(SETTINGS).composeString(document).orElseThrow());
      assertEquals(other, ours(document), () -> "\n" + document);
    }
    assertTrue(lines > 10 * DOCUMENTS, "the documents are too small: " + lines + " lines");
  }

  static List<String> broken() {
    return List.of(
        "a: [1, 2\n",
        "a: {b: 1\n",
        "a: 1, 2]\n- b\n",
        "a: 'x\n",
        "a: \"x\n",
        "a: b: c\n",
        "a: 1\na: 2\n",
        "a: {b: 1, b: 2}\n",
        "- a\nb: c\n",
        "a:\n\t- b\n",
        "a: @x\n",
        "a: `x`\n",
        "a: %x\n",
        "]\n",
        "}\n",
        "a: ]\n",
        "a: \"\\q\"\n",
        "a: 1\n  b: 2\n",
        "a: *nobody\n",
        "a: [b]]\n",
        "a: 'x' y\n",
        "a: \"x\" y\n",
        "a: 1\n b: 2\n",
        "  a: 1\nb: 2\n",
        "a:\n  - b\n - c\n",
        "a: b\nc\n",
        "a: \u0001\n",
        "a: !<x\n",
        "a: &\n",
        "--- a\n--- b\n",
        "a: - b\n");
  }

  @ParameterizedTest
  @MethodSource("broken")
  void bothRefuse(String document) {
    assertThrows(YamlEngineException.class, () -> new Load(SETTINGS).loadFromString(document));
    assertEquals("refused", ours(document));
  }

  private static String ours(String document) {
    return new YamlReader()
        .read(
            SourceText.of("generated.yaml", document),
            root -> org.tidemark.source.Loaded.good(Bench.shown(root)))
        .match(tree -> tree, errors -> "refused");
  }

  private static String shown(Node node) {
    if (node instanceof MappingNode map) {
      return map.getValue().stream()
          .map(t -> shown(t.getKeyNode()) + ": " + shown(t.getValueNode()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof SequenceNode list) {
      return list.getValue().stream()
          .map(DifferentialReaderTest::shown)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return '"' + Marked.write(((ScalarNode) node).getValue()) + '"';
  }
}
