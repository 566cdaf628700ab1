package org.tidemark;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.model.Bibliography;
import org.tidemark.source.Loaded;
import org.tidemark.yaml.Layout;
import org.tidemark.yaml.Shape;
import org.tidemark.yaml.YamlNode;

/** A layout that would change something is noticed before anything is written. */
class TidyDeskTest {
  private static final String TEXT =
      """
      bibliography: small
      edition: 1
      facts:
        A-1:
          says:   "Something."   # why
          publication: A body. A title.
          standing: read
        A-2: {says: "Something else.", publication: B, standing: read}
      """;

  @TempDir Path folder;

  private Loaded<Tidied> tidied(Path file, BiFunction<YamlNode, Shape, String> layout) {
    PolicyShelf shelf =
        new PolicyShelf(
            new Resources(TidyDeskTest.class.getClassLoader()),
            List.of(),
            new Lazy<>(() -> Loaded.good(new Bibliography(List.of()))));
    return new TidyDesk(new Meaning(shelf), layout).tidy(file);
  }

  private Path file() throws IOException {
    return Files.writeString(folder.resolve("facts.yaml"), TEXT, UTF_8);
  }

  @Test
  void aGoodLayoutIsWritten() throws IOException {
    Path file = file();
    assertTrue(tidied(file, Layout::of).match(Tidied::changed, errors -> false));
    assertEquals(
        """
        bibliography: small
        edition: 1
        facts:
          A-1:
            says: "Something."  # why
            publication: A body. A title.
            standing: read
          A-2:
            says: Something else.
            publication: B
            standing: read
        """,
        Files.readString(file, UTF_8));
    assertEquals(false, tidied(file, Layout::of).match(Tidied::changed, errors -> true));
  }

  /** A comment lost, a text changed, an entry lost or moved, an error, a layout that never ends. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "  # why |",
        "# why | # because",
        "Something else. | Something.",
        "edition: 1 | edition: 2",
        "standing: read | standing: red",
        "A-2: | A-3:",
        "bibliography: small | small: bibliography",
        "'edition: 1\\n' | 'edition: 1\\n\\n\\n'",
        "'facts:' | 'facts: ['"
      })
  void aWrongOneIsRefused(String laid, String wrong) throws IOException {
    Path file = file();
    String from = laid.replace("\\n", "\n");
    String to = wrong == null ? "" : wrong.replace("\\n", "\n");
    AtomicBoolean first = new AtomicBoolean(true);
    BiFunction<YamlNode, Shape, String> tried =
        (tree, shape) -> {
          String text = Layout.of(tree, shape);
          boolean spoil = first.getAndSet(false);
          assertTrue(!spoil || text.contains(from), text);
          return spoil ? text.replace(from, to) : text;
        };
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> tidied(file, tried));
    assertEquals(
        file + " would not say the same when laid out, and was left as it is",
        refused.getMessage());
    assertEquals(TEXT, Files.readString(file, UTF_8));
  }
}
