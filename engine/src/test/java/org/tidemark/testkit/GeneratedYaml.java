package org.tidemark.testkit;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Well-formed documents in every style that policies are written in: blocks, brackets and braces,
 * plain and quoted texts, texts over several lines, remarks between lines. No character needs two
 * UTF-16 units: the other reader fails where such a pair meets the end of its buffer.
 */
public final class GeneratedYaml {
  private static final List<String> PLAIN =
      List.of(
          "ward",
          "5.5",
          "05.50",
          "yes",
          "no",
          "null",
          "2026-09-01",
          "12:30",
          "1e3",
          "a-b",
          "-5",
          "not-stated",
          "Turn the patient onto the left side.",
          "Kräuter",
          "5 µL",
          "a'b",
          "x#y",
          "\u2713 done",
          "100 %",
          "3/4",
          "<5",
          "=5",
          "(two)",
          "~",
          "true",
          "0x1F",
          ".5",
          "é");
  private static final List<String> ANY =
      List.of(
          "",
          " ",
          "a: b",
          "# no remark",
          "[x]",
          "{x}",
          "- x",
          "*a",
          "&a",
          "!t",
          "|",
          ">",
          "@",
          "`",
          "%",
          "it's",
          "\"so\"",
          "back\\slash",
          "a, b",
          "?",
          ": ",
          " led and followed ",
          "''");

  private final Random random;
  private final StringBuilder out = new StringBuilder();
  private int names;

  private GeneratedYaml(Random random) {
    this.random = random;
  }

  public static String document(Random random) {
    GeneratedYaml document = new GeneratedYaml(random);
    document.out.append(random.nextInt(4) == 0 ? "---\n" : "");
    document.map(0, 0);
    return document.out.toString();
  }

  private void map(int indent, int depth) {
    int fields = 2 + random.nextInt(5);
    for (int i = 0; i < fields; i++) {
      remark(indent);
      out.append(" ".repeat(indent)).append(name()).append(':');
      value(indent, depth);
    }
  }

  private void list(int indent, int depth) {
    int items = 1 + random.nextInt(4);
    for (int i = 0; i < items; i++) {
      out.append(" ".repeat(indent)).append('-');
      value(indent, depth);
    }
  }

  private void value(int indent, int depth) {
    switch (random.nextInt(depth > 4 ? 4 : 7)) {
      case 0 -> out.append(' ').append(flow(3)).append('\n');
      case 1 -> severalLines(indent);
      case 4 -> inside(indent, depth, true);
      case 5 -> inside(indent, depth, false);
      default -> out.append(' ').append(text(PLAIN)).append('\n');
    }
  }

  private void inside(int indent, int depth, boolean map) {
    out.append('\n');
    int deeper = indent + 1 + random.nextInt(4);
    if (map) {
      map(deeper, depth + 1);
    } else {
      list(deeper, depth + 1);
    }
  }

  /** A text over several lines: kept, folded, or plain with its lines joined. */
  private void severalLines(int indent) {
    String margin = " ".repeat(indent + 2);
    String head = List.of("|", "|-", "|+", ">", ">-", ">+", "", "\"", "'").get(random.nextInt(9));
    boolean quoted = head.equals("\"") || head.equals("'");
    boolean block = !quoted && !head.isEmpty();
    out.append(' ').append(head).append(block ? "\n" + margin : "");
    out.append("First line.\n");
    out.append(random.nextInt(3) == 0 ? "\n" : "");
    out.append(margin).append("Second line").append(quoted ? head : "").append('\n');
  }

  private void remark(int indent) {
    if (random.nextInt(6) == 0) {
      out.append(" ".repeat(indent)).append("# a remark: [not read\n");
    }
  }

  private String flow(int depth) {
    int kind = depth == 0 ? 0 : random.nextInt(4);
    int items = random.nextInt(4);
    return switch (kind) {
      case 1 ->
          IntStream.range(0, items)
              .mapToObj(i -> flow(depth - 1))
              .collect(Collectors.joining(", ", "[", "]"));
      case 2 ->
          IntStream.range(0, items)
              .mapToObj(i -> name() + ": " + flow(depth - 1))
              .collect(Collectors.joining(", ", "{", "}"));
      default -> quoted();
    };
  }

  private String quoted() {
    String text = random.nextBoolean() ? pick(ANY) : pick(PLAIN);
    return random.nextBoolean()
        ? "'" + text.replace("'", "''") + "'"
        : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private String text(List<String> plain) {
    return random.nextInt(3) == 0 ? quoted() : pick(plain);
  }

  private String pick(List<String> texts) {
    return texts.get(random.nextInt(texts.size()));
  }

  private String name() {
    names++;
    return random.nextInt(8) == 0 ? "\"name-" + names + '"' : "name-" + names;
  }
}
