package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedYaml;
import org.tidemark.testkit.Noise;
import org.tidemark.yaml.Layout;
import org.tidemark.yaml.Saying;
import org.tidemark.yaml.Shape;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Laying a text out changes nothing that it says, loses no comment, and is done after one time. */
class LayoutTest {
  private static YamlNode read(String text) {
    return new YamlReader()
        .read(SourceText.of("text", text))
        .match(
            node -> node,
            errors -> {
              throw new AssertionError(
                  text + "\n" + errors.stream().map(Diagnostic::render).toList());
            });
  }

  @Test
  void generatedTextsSayTheSameAfterwards() {
    for (int seed = 0; seed < 3_000; seed++) {
      holds(GeneratedYaml.document(new Random(seed)), "seed " + seed);
    }
  }

  /** Comments and blank lines anywhere between the lines, and behind them. */
  @Test
  void noCommentIsLostOrMovesTwice() {
    int comments = 0;
    for (int seed = 0; seed < 3_000; seed++) {
      Random random = new Random(seed);
      String text = Noise.in(GeneratedYaml.document(random), random);
      comments += holds(text, "seed " + seed);
    }
    assertTrue(comments > 3_000, "only " + comments);
  }

  /** How many comments were kept. */
  private static int holds(String text, String which) {
    YamlNode before = read(text);
    String laid = Layout.of(before, Shape.ANY);
    YamlNode after = read(laid);
    String both = which + "\n" + text + "\n-->\n" + laid;
    assertEquals(Saying.of(before, Shape.ANY), Saying.of(after, Shape.ANY), both);
    assertEquals(Layout.comments(before), Layout.comments(after), both);
    assertEquals(laid, Layout.of(after, Shape.ANY), both);
    return Layout.comments(after).size();
  }
}
