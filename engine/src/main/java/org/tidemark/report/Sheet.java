package org.tidemark.report;

import java.util.ArrayList;
import java.util.List;

/** A text of at most 80 columns, with hanging indents, that needs neither colour nor a screen. */
final class Sheet {
  private static final int WIDTH = 80;

  private final StringBuilder text = new StringBuilder();

  Sheet line(String line) {
    text.append(line.stripTrailing()).append('\n');
    return this;
  }

  Sheet blank() {
    text.append('\n');
    return this;
  }

  /** A heading on a line of its own, with a blank line before it. */
  Sheet heading(String heading) {
    return blank().line(heading);
  }

  /** A paragraph behind a lead, such as a number; further lines stand under its first word. */
  Sheet hanging(String lead, String paragraph) {
    String indent = " ".repeat(lead.length());
    String before = lead;
    for (String line : wrapped(paragraph, WIDTH - lead.length())) {
      line(before + line);
      before = indent;
    }
    return this;
  }

  Sheet paragraph(String paragraph) {
    return hanging("", paragraph);
  }

  /** Numbered from 1. */
  Sheet numbered(List<String> items) {
    int width = Integer.toString(items.size()).length();
    for (int i = 0; i < items.size(); i++) {
      String number = Integer.toString(i + 1);
      hanging("  " + " ".repeat(width - number.length()) + number + " ", items.get(i));
    }
    return this;
  }

  Sheet bulleted(List<String> items) {
    items.forEach(item -> hanging("  - ", item));
    return this;
  }

  /** The lines of a paragraph; a word longer than a line gets a line of its own. */
  static List<String> wrapped(String paragraph, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(paragraph)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static List<String> words(String paragraph) {
    List<String> words = new ArrayList<>();
    int start = 0;
    for (int i = 0; i <= paragraph.length(); i++) {
      if (i == paragraph.length() || Character.isWhitespace(paragraph.charAt(i))) {
        if (i > start) {
          words.add(paragraph.substring(start, i));
        }
        start = i + 1;
      }
    }
    return words;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
