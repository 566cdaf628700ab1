package org.tidemark.guide;

import java.util.List;

/**
 * A piece of an article's text, word for word, with the words that matched.
 *
 * @param text the piece
 * @param marks what to mark in it, in order, never overlapping
 */
public record Snippet(String text, List<Mark> marks) {
  /**
   * A stretch of a snippet.
   *
   * @param start the first offset
   * @param end the offset after the last
   */
  public record Mark(int start, int end) {}

  public Snippet {
    marks = List.copyOf(marks);
  }

  /** The text with every mark between two strings. */
  public String marked(String before, String after) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (Mark mark : marks) {
      out.append(text, at, mark.start()).append(before);
      out.append(text, mark.start(), mark.end()).append(after);
      at = mark.end();
    }
    return out.append(text.substring(at)).toString();
  }
}
