package org.tidemark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

class TemplateFillerTest {
  private final TemplateFiller filler = new TemplateFiller();

  @Test
  void placesCountFromTheFilesFirstLineEvenBehindFrontMatter() {
    String file = "---\narticle: x\n---\nFirst line.\n\n## Why\nWait $values.retst_wait.\n";
    assertEquals("7:6", place(file, file.indexOf("First")));
  }

  @Test
  void placesAreRightBehindTabsAndAnyLineEnd() {
    String file = "---\r\n---\r\n## One\r\n\ta\tb $values.nope\r\n";
    assertEquals("4:6", place(file, file.indexOf("## One")));
  }

  @Test
  void placesAreRightInABodyThatBeginsInsideALine() {
    String file = "do: 'Wait $values.nope'\n";
    assertEquals("1:11", place(file, 5));
  }

  private String place(String file, int from) {
    SourceText source = SourceText.of("a.md", file);
    return filler
        .fill(source.span(from, file.length()), PrintFixtures.VIEW)
        .match(filled -> filled, d -> d.get(0).at().line() + ":" + d.get(0).at().column());
  }

  @Test
  void theMessageSaysWhatToWrite() {
    String rendered =
        fill("pH $values.ph-cut-off or less", PrintFixtures.VIEW)
            .match(filled -> filled, d -> d.get(0).render());
    assertEquals(
        """
        body.md:1:4: error: there is no $values.ph here [template-name]
          1 | pH $values.ph-cut-off or less
            |    ^^^^^^^^^^
          help: names here have underscores: write $values.ph_cut_off
        """,
        rendered);
  }

  /** Values that would be markup, or a template, if they were ever taken for one. */
  static Stream<String> hostile() {
    return Stream.of(
        "<script>alert(1)</script>",
        "<b>bold</b>",
        "# heading",
        "1. item",
        "12) item",
        "- item",
        "+ item",
        "* item",
        "> quote",
        "---",
        "===",
        "    code",
        "`code`",
        "**bold** and _thin_",
        "[link](https://example.org)",
        "(https://example.org)",
        "![picture](x.png)",
        "<https://example.org>",
        "&lt;b&gt; &copy;",
        "line\nbreak\n\n# heading",
        "back\\slash \\",
        "$values.retest_wait",
        "#if(true)x#end",
        "#set($x = 1)",
        "#evaluate('x')",
        "${policy.title}",
        "\uE000\uE000 heading",
        "~~~",
        "| a | b |",
        "'\"><img src=x onerror=alert(1)>");
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void aValueNeverBecomesMarkupOrATemplate(String value) {
    String shown = value.strip().replaceAll("\\s", " ").replace('\uE000', '\uFFFD');
    // At the beginning of a line, inside a list item, behind words, behind a link's text.
    for (String template :
        List.of("$values.retest_wait", "- $values.retest_wait", "Wait $values.retest_wait")) {
      String html = new MarkdownPage().html(filled(template, value));
      String expected =
          template.startsWith("-")
              ? "<ul>\n<li>" + asHtml(shown) + "</li>\n</ul>\n"
              : "<p>" + template.replace("$values.retest_wait", asHtml(shown)) + "</p>\n";
      assertEquals(expected, html);
    }
    assertTrue(
        new MarkdownPage().html(filled("[x]$values.retest_wait", value)).startsWith("<p>[x]"));
  }

  private static String asHtml(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private String filled(String template, String value) {
    return fill(template, view(value)).match(f -> f, d -> d.get(0).render());
  }

  @ParameterizedTest
  @ValueSource(strings = {"5.5", "10 to 20 mL", "60 minutes", "21:00", "2.5", "Nutrition nurse"})
  void ordinaryValuesStayAsPeopleSearchThem(String value) {
    assertEquals(value, MarkdownEscape.escape(value));
  }

  @Test
  void valuesInAPageAreEscapedForTextAndQuotedAttributes() {
    assertEquals(
        "&lt;a b=&quot;c&quot; d=&#39;e&#39;&gt; &amp;amp; &#96; x y",
        HtmlEscape.escape("<a b=\"c\" d='e'> &amp; ` x\ny"));
  }

  @Test
  void aListThatIsTooLongIsRefusedBeforeAnythingIsFilled() {
    PolicyView long201 =
        new PolicyView(
            Map.of(),
            Map.of(),
            Map.of("steps", Collections.nCopies(TemplateFiller.LONGEST_LIST + 1, "Wait.")),
            Map.of());
    assertEquals(
        "the list lists.steps has 201 items, which is too many",
        fill("Do not feed.", long201).match(f -> f, d -> d.get(0).message()));
  }

  @Test
  void theLongestListIsFilledToItsLastItem() {
    PolicyView all =
        new PolicyView(
            Map.of(),
            Map.of(),
            Map.of("steps", Collections.nCopies(TemplateFiller.LONGEST_LIST, "x")),
            Map.of());
    assertEquals(
        "x".repeat(TemplateFiller.LONGEST_LIST),
        fill("#foreach($s in $lists.steps)$s#end", all).match(f -> f, d -> d.get(0).render()));
  }

  @Test
  void aTextThatIsTooLongIsRefused() {
    assertEquals(
        "values.retest_wait has 4001 characters, which is too many",
        fill("x", view("y".repeat(4001))).match(f -> f, d -> d.get(0).message()));
  }

  @ParameterizedTest
  @ValueSource(ints = {200, 2000, 4000})
  void deepNestingIsAnErrorAndNeverACrash(int depth) {
    String nots = "#if(" + "!".repeat(depth) + "$stated.head_up)x#end";
    String brackets = "#if(" + "(".repeat(depth) + "$stated.head_up" + ")".repeat(depth) + ")x#end";
    String ifs = "#if($stated.head_up)".repeat(depth) + "x" + "#end".repeat(depth);
    for (String template : List.of(nots, brackets, ifs)) {
      Loaded<String> result = fill(template, PrintFixtures.VIEW);
      assertTrue(
          result.match(
              String::isEmpty,
              d -> List.of("template-fence", "template-failed").contains(d.get(0).code().id())),
          () -> result.diagnostics().toString());
    }
  }

  @Test
  void stringsOfSignsNeverEscapeAsAnException() {
    String[] parts = {
      "#",
      "$",
      "{",
      "}",
      "(",
      ")",
      "[",
      "]",
      "'",
      "\"",
      "!",
      "if",
      "end",
      "else",
      "foreach",
      " ",
      "\n",
      "values",
      ".",
      "ph_cut_off",
      "\\",
      "|",
      "*",
      "@",
      "$stated.head_up",
      "#if(",
      "#end"
    };
    java.util.Random random = new java.util.Random(20261125);
    int broken = 0;
    for (int round = 0; round < 3000; round++) {
      StringBuilder template = new StringBuilder();
      for (int i = random.nextInt(12); i >= 0; i--) {
        template.append(parts[random.nextInt(parts.length)]);
      }
      broken += fill(template.toString(), PrintFixtures.VIEW).match(f -> 0, d -> 1);
    }
    assertTrue(broken > 1500 && broken < 3000, "refused " + broken + " of 3000");
  }

  private Loaded<String> fill(String template, PolicyView view) {
    SourceText source = SourceText.of("body.md", template);
    return filler.fill(source.span(0, source.text().length()), view);
  }

  private static PolicyView view(String value) {
    return new PolicyView(
        Map.of("retest_wait", value), Map.of("retest_wait", true), Map.of(), Map.of());
  }
}
