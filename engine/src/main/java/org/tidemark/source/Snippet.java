package org.tidemark.source;

/** Prints the line that holds a place and underlines the place. */
final class Snippet {
  private static final int LONGEST_LINE = 160;

  private Snippet() {}

  static void append(StringBuilder out, Span at) {
    SourceText source = at.source();
    int lineStart = source.startOfLine(at.line());
    int lineEnd = source.endOfLine(at.line());
    // A very long line is shown around the place only, so that the caret stays on a screen.
    boolean far = at.start() - lineStart > LONGEST_LINE;
    int from = far ? whole(source, at.start() - LONGEST_LINE / 2) : lineStart;
    int to = whole(source, Math.min(lineEnd, from + LONGEST_LINE));
    String number = Integer.toString(at.line());
    String shown = source.text().substring(from, to);
    out.append("  ").append(number).append(" | ").append(visible(shown)).append('\n');
    int start = Math.min(at.start(), to);
    String before = source.text().substring(from, start);
    String under = source.text().substring(start, Math.max(start, Math.min(at.end(), to)));
    out.append("  ").append(" ".repeat(number.length())).append(" | ");
    out.append(" ".repeat(width(before)));
    out.append("^".repeat(Math.max(1, width(under)))).append('\n');
  }

  /** An offset that does not cut a character in two. */
  private static int whole(SourceText source, int offset) {
    String text = source.text();
    boolean inside =
        offset > 0
            && offset < text.length()
            && Character.isLowSurrogate(text.charAt(offset))
            && Character.isHighSurrogate(text.charAt(offset - 1));
    return inside ? offset - 1 : offset;
  }

  /**
   * Characters that cannot be seen or that move the caret are shown as one visible character each.
   */
  private static String visible(String line) {
    StringBuilder out = new StringBuilder(line.length());
    line.codePoints().map(Snippet::visible).forEach(out::appendCodePoint);
    return out.toString();
  }

  private static int visible(int c) {
    boolean unseen = Invisible.isInvisible(c) || Invisible.isNoCharacter(c);
    return c == '\t' ? '\u2192' : unseen ? '\u00B7' : c;
  }

  private static int width(String text) {
    return text.codePoints().map(c -> cells(visible(c))).sum();
  }

  /** How many cells of a terminal a character takes. */
  private static int cells(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        Character.isIdeographic(c)
            || (c >= 0x1F300 && c <= 0x1FAFF)
            || (c >= 0x3041 && c <= 0x30FF)
            || (c >= 0xAC00 && c <= 0xD7A3)
            || (c >= 0xFF01 && c <= 0xFF60);
    return wide ? 2 : 1;
  }
}
