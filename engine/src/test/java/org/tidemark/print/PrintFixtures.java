package org.tidemark.print;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlReader;

/** What the tests of this room share. */
final class PrintFixtures {
  private PrintFixtures() {}

  /** An invented hospital's policy, as small as the fence's cases need it. */
  static final PolicyView VIEW =
      new PolicyView(
          Map.of("ph_cut_off", "5.5", "retest_wait", "60 minutes"),
          Map.of("ph_cut_off", true, "retest_wait", true, "head_up", false),
          Map.of("steps", List.of("Turn to the left.", "Wait."), "none", List.of()),
          Map.of("title", "Tubes in adults", "owner", "Example Hospital", "edition", "3"));

  static String resource(String name) {
    try (InputStream in =
        Objects.requireNonNull(PrintFixtures.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static Stream<YamlMap> cases(String name) {
    YamlList list =
        new YamlReader()
            .read(SourceText.of(name, resource(name)))
            .match(
                node -> (YamlList) node,
                problems -> {
                  throw new AssertionError(problems.get(0).render());
                });
    assertFalse(list.items().isEmpty(), name);
    return list.items().stream().map(item -> (YamlMap) item);
  }
}
