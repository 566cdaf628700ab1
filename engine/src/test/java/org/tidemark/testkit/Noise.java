package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;
import org.tidemark.yaml.YamlText;

/** Puts comments and blank lines into a text, wherever they say nothing. */
public final class Noise {
  private final List<Span> texts = new ArrayList<>();
  private final Random random;
  private int comments;

  private Noise(Random random) {
    this.random = random;
  }

  /** The text with more in it that says nothing. */
  public static String in(String text, Random random) {
    SourceText source = SourceText.of("text", text);
    Noise noise = new Noise(random);
    new YamlReader()
        .read(source)
        .match(
            tree -> {
              noise.gather(tree);
              return tree;
            },
            broken -> {
              throw new IllegalArgumentException(text);
            });
    return noise.through(source);
  }

  private void gather(YamlNode node) {
    if (node instanceof YamlText text) {
      texts.add(text.span());
    } else if (node instanceof YamlList list) {
      list.items().forEach(this::gather);
    } else if (node instanceof YamlMap map) {
      for (YamlMap.Entry entry : map.entries()) {
        texts.add(entry.key().span());
        gather(entry.value());
      }
    }
  }

  private String through(SourceText source) {
    StringBuilder out = new StringBuilder();
    boolean begun = false;
    for (int line = 1; line <= source.lineCount(); line++) {
      String text = source.line(line);
      if (!within(source.startOfLine(line)) && !text.startsWith("---")) {
        between(out);
      }
      out.append(text);
      boolean beside = begun && !text.isBlank() && text.indexOf('#') < 0;
      if (beside && !within(source.endOfLine(line)) && random.nextInt(8) == 0) {
        out.append("  ").append(comment());
      }
      out.append(line < source.lineCount() ? "\n" : "");
      begun = true;
    }
    return out.toString();
  }

  private void between(StringBuilder out) {
    while (random.nextInt(5) == 0) {
      out.append(random.nextBoolean() ? "" : " ".repeat(random.nextInt(9)) + comment())
          .append('\n');
    }
  }

  private String comment() {
    comments++;
    return "# comment " + comments;
  }

  /** Whether a place lies inside a text, or where more of one could still follow. */
  private boolean within(int offset) {
    return texts.stream().anyMatch(s -> s.start() < offset && offset < reach(s));
  }

  /** Where a text is over for certain. */
  private static int reach(Span text) {
    boolean block = text.text().startsWith("|") || text.text().startsWith(">");
    boolean lines = text.text().indexOf('\n') >= 0;
    return text.end() + (block ? 3 : lines ? 1 : 0);
  }
}
