package org.tidemark.source;

/** Prints the line that holds a place and underlines the place. */
final class Snippet {
  private static final int LONGEST_LINE = 160;

  private Snippet() {}

  static void append(StringBuilder out, Span at) {
    String line = at.source().line(at.line());
    int from = at.column() - 1;
    int to = Math.max(from + 1, Math.min(from + at.end() - at.start(), line.length()));
    // A very long line is shown around the place only, so that the caret stays on a screen.
    int cut = from > LONGEST_LINE ? from - LONGEST_LINE / 2 : 0;
    String shown = line.substring(cut, Math.min(line.length(), cut + LONGEST_LINE));
    String number = Integer.toString(at.line());
    out.append("  ").append(number).append(" | ").append(visible(shown)).append('\n');
    out.append("  ").append(" ".repeat(number.length())).append(" | ");
    out.append(" ".repeat(from - cut));
    out.append("^".repeat(Math.min(to - from, LONGEST_LINE))).append('\n');
  }

  /**
   * Characters that cannot be seen or that move the caret are shown as one visible character each.
   */
  private static String visible(String line) {
    StringBuilder out = new StringBuilder(line.length());
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      out.append(c == '\t' ? '\u2192' : Invisible.isInvisible(c) ? '\u00B7' : c);
    }
    return out.toString();
  }
}
