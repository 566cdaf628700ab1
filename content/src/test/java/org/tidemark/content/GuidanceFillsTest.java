package org.tidemark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tidemark.print.MarkdownPage;
import org.tidemark.print.PolicyView;
import org.tidemark.print.TemplateFiller;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/**
 * Every article can be filled: by a policy that states everything and by one that states nothing.
 */
class GuidanceFillsTest {
  private static final Path GUIDANCE = Path.of("src/main/resources/org/tidemark/content/guidance");

  /** The names that articles may use; a name outside is a mistake in the article. */
  private static final List<String> VALUES =
      List.of(
          "check_every",
          "drain_call_within",
          "fallback_air",
          "fallback_wait",
          "flush_medicine",
          "flush_volume",
          "hang_closed",
          "hang_opened",
          "head_up",
          "head_up_after",
          "lowest_pass",
          "night_from",
          "night_until",
          "ph_cut_off",
          "residual_limit",
          "retest_wait",
          "sample_least",
          "second_reader_above",
          "set_change",
          "tries_limit",
          "tube_change_polyurethane",
          "tube_change_pvc");

  private static final List<String> LISTS =
      List.of(
          "barred_steps",
          "fallback_steps",
          "never_count",
          "recheck_triggers",
          "record_at_check",
          "record_at_passing");

  private final TemplateFiller filler = new TemplateFiller();

  @TestFactory
  Stream<DynamicTest> filledByEveryPolicy() {
    return articles().stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> fills(file)));
  }

  private void fills(Path file) throws IOException {
    String all = filled(file, view(true));
    assertFalse(all.contains("$"), all);
    assertTrue(new MarkdownPage().html(all).contains("<h2>"), all);
    String none = filled(file, view(false));
    assertFalse(none.contains("SEVEN"), none);
  }

  private String filled(Path file, PolicyView view) throws IOException {
    SourceText source = SourceText.of(file.getFileName().toString(), Files.readString(file));
    int body = source.text().indexOf("\n---\n", 4) + 5;
    Loaded<String> result = filler.fill(source.span(body, source.text().length()), view);
    return result.match(
        text -> text,
        problems -> {
          throw new AssertionError(problems.get(0).render());
        });
  }

  @Test
  void articlesAreSeen() {
    assertTrue(articles().size() >= 30, "only " + articles().size());
    assertEquals(22, VALUES.size());
  }

  private static List<Path> articles() {
    try (Stream<Path> files = Files.list(GUIDANCE)) {
      return files.filter(f -> f.toString().endsWith(".md")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static PolicyView view(boolean stated) {
    Map<String, String> values = new TreeMap<>();
    Map<String, Boolean> is = new TreeMap<>();
    Map<String, List<String>> lists = new TreeMap<>();
    VALUES.forEach(name -> is.put(name, stated));
    if (stated) {
      VALUES.forEach(name -> values.put(name, "SEVEN"));
    }
    LISTS.forEach(name -> lists.put(name, stated ? List.of("One.", "Two.") : List.of()));
    return new PolicyView(
        values,
        is,
        lists,
        Map.of("title", "T", "owner", "O", "edition", "1", "review_by", "31 Mar 2027"));
  }
}
