package org.tidemark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkdownPageTest {
  private final MarkdownPage page = new MarkdownPage();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "**Stop.**|<p><strong>Stop.</strong></p>",
        "<script>x</script>|<p>&lt;script&gt;x&lt;/script&gt;</p>",
        "<div onclick=x>|<p>&lt;div onclick=x&gt;</p>",
        "[a](javascript:alert(1))|<p><a rel=\"nofollow\" href=\"\">a</a></p>",
        "[a](JaVaScRiPt:alert(1))|<p><a rel=\"nofollow\" href=\"\">a</a></p>",
        "[a](data:text/html,x)|<p><a rel=\"nofollow\" href=\"\">a</a></p>",
        "[a](//evil.example/)|<p><a rel=\"nofollow\" href=\"\">a</a></p>",
        "[a](xray)|<p><a rel=\"nofollow\" href=\"xray\">a</a></p>",
        "[a](https://example.org/x)|<p><a rel=\"nofollow\" href=\"https://example.org/x\">a</a></p>",
        "![a film](https://example.org/x.png)|<p>a film</p>",
        "[LA-25]|<p>[LA-25]</p>"
      })
  void html(String markdown, String expected) {
    assertEquals(expected, page.html(markdown).strip());
  }

  @Test
  void aTerminalGetsHeadingsNumberedStepsAndWrappedLines() {
    String markdown =
        """
        The answer in one line. [LA-25]

        ## What to do
        1. Turn the person onto the left side, **unless** their own plan of care says that this side is not for them. [LA-25]
        2. Wait.
           - with nothing running
           - at least once

        > Do not feed.

        ## Why
        Because `x` is so\\*.
        """;
    assertEquals(
        """
        The answer in one line. [LA-25]

        What to do
        ----------

        1. Turn the person onto the left side, unless their own plan of care says that
           this side is not for them. [LA-25]
        2. Wait.

           - with nothing running
           - at least once

        | Do not feed.

        Why
        ---

        Because x is so*.
        """,
        page.text(markdown));
  }

  @Test
  void aTerminalIsNeverCommanded() {
    assertEquals("a\uFFFD[31mred\n", page.text("a\u001b[31mred"));
  }

  @Test
  void noLineIsWiderThanATerminal() {
    String text = page.text("word ".repeat(100) + "\n\n- " + "item ".repeat(60));
    assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
    assertEquals(160, text.replace("- ", "").strip().split("\\s+", -1).length);
  }
}
