package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.testkit.Marked;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;
import org.tidemark.yaml.YamlText;

/**
 * What is refused in one place is refused in every place of its kind: each number of a policy is
 * written in each wrong form, each name in wrong letters, each text as something that hides. An
 * error must stand on the line that was changed.
 */
final class EveryPlaceTest {
  private static final String GOOD = Bench.resource("base/policy.yaml");

  private static final List<YamlText> VALUES = new ArrayList<>();
  private static final List<YamlText> ITEMS = new ArrayList<>();
  private static final List<YamlText> KEYS = new ArrayList<>();
  private static final List<YamlNode> LISTS = new ArrayList<>();

  @BeforeAll
  static void places() {
    new YamlReader()
        .read(
            SourceText.of("policy.yaml", GOOD),
            root -> {
              look(root);
              return Loaded.good(root);
            });
    assertTrue(VALUES.size() > 100 && KEYS.size() > 100, "too few places to try");
  }

  private static void look(YamlNode node) {
    if (node instanceof YamlMap map) {
      map.entries().forEach(e -> KEYS.add(e.key()));
      map.entries().forEach(e -> look(e.value()));
    } else if (node instanceof YamlList list) {
      LISTS.add(list);
      list.items().forEach(EveryPlaceTest::look);
    } else if (LISTS.stream().anyMatch(list -> ((YamlList) list).items().contains(node))) {
      ITEMS.add((YamlText) node);
    } else {
      VALUES.add((YamlText) node);
    }
  }

  /** Where the changed text is taken as good, one line each. */
  private static List<String> taken(List<? extends YamlNode> places, UnaryOperator<String> change) {
    List<String> taken = new ArrayList<>();
    for (YamlNode place : places) {
      Span at = place.span();
      String other = change.apply(at.text());
      String text = GOOD.substring(0, at.start()) + other + GOOD.substring(at.end());
      int line = line(text, at.start());
      if (!other.equals(at.text()) && said(text).stream().noneMatch(d -> isThere(d, text, line))) {
        taken.add("line " + line + ": " + Marked.write(other) + " for " + at.text());
      }
    }
    return taken;
  }

  private static List<Diagnostic> said(String text) {
    return Bench.read("policy", SourceText.of("policy.yaml", text)).diagnostics();
  }

  private static boolean isThere(Diagnostic said, String text, int line) {
    return said.severity() == Severity.ERROR && line(text, said.at().start()) == line;
  }

  private static int line(String text, int at) {
    return (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
  }

  private static List<YamlText> numbers() {
    return VALUES.stream().filter(v -> v.text().matches("[0-9.]+")).toList();
  }

  private static void refused(List<? extends YamlNode> places, UnaryOperator<String> change) {
    assertEquals(List.of(), taken(places, change));
  }

  @Test
  void everyWrongNumberInEveryPlace() {
    assertTrue(numbers().size() > 8, "too few numbers");
    List<String> wrong =
        List.of(
            "5,5",
            "\u22645.5",
            "5.5 pH",
            "05.5",
            ".nan",
            "5_5",
            "1e3",
            "\u0665",
            "5\u20136",
            "5..6",
            "+5",
            "5.",
            ".5",
            "5\u00A0",
            "\u20185\u2019",
            "~",
            "true",
            "5/6",
            "-5.5",
            "5.5555555",
            "12345678901",
            "5.5.5",
            "[5]",
            "{a: 5}",
            "!!float 5",
            "&a 5",
            "*a",
            "five");
    wrong.forEach(w -> refused(numbers(), old -> w));
  }

  @Test
  void everyFieldAndNameInWrongLetters() {
    refused(KEYS, old -> old.toUpperCase(Locale.ROOT));
    refused(KEYS, old -> old.charAt(0) + "\u200B" + old.substring(1));
    refused(KEYS, old -> old.charAt(0) + "\u00AD" + old.substring(1));
    refused(KEYS, old -> "\u00A0" + old);
    refused(KEYS, old -> old + "\u00A0");
    refused(KEYS, old -> old + "_");
    refused(KEYS, old -> old.replace('a', '\u0430').replace('e', '\u0435').replace('o', '\u043E'));
    refused(KEYS, old -> "!!str " + old);
    refused(KEYS, old -> "? " + old);
    refused(KEYS, old -> "<<");
    refused(KEYS, old -> "[" + old + "]");
  }

  /** Nothing, something of another shape, and characters that hide what is read. */
  @Test
  void everyTextAsSomethingElse() {
    List<String> wrong =
        List.of(
            "",
            "\"\"",
            "''",
            "\" \"",
            "{}",
            "{a: b}",
            "\u2018a\u2019",
            "\u201Ca\u201D",
            "a\u202Eb",
            "a\u2028b",
            "a\uFFFDb",
            "\uFEFFa",
            "!!str a",
            "&a b",
            "*a",
            "\"a\\nb\"",
            "\"a\\tb\"",
            "a\tb",
            "a: b",
            "|",
            ">",
            "@a",
            "`a`",
            "'a",
            "\"a",
            "%a");
    wrong.forEach(w -> refused(VALUES, old -> w));
    wrong.stream().filter(w -> !w.isEmpty()).forEach(w -> refused(ITEMS, old -> w));
    refused(VALUES, old -> "[]");
    refused(LISTS, old -> "[]");
  }
}
