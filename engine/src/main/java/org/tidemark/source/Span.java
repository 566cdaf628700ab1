package org.tidemark.source;

/**
 * A place in a text: from {@code start} up to but not including {@code end}, in UTF-16 units.
 *
 * @param source the text
 * @param start the first offset
 * @param end the offset after the last
 */
public record Span(SourceText source, int start, int end) {
  public Span {
    if (start < 0 || end < start || end > source.text().length()) {
      throw new IllegalArgumentException(
          "no such place in " + source + ": " + start + " to " + end);
    }
  }

  /** The line, from 1, at which the place begins. */
  public int line() {
    return source.lineAt(start);
  }

  /** The column, from 1, at which the place begins. */
  public int column() {
    return source.columnAt(start);
  }

  /** What stands there. */
  public String text() {
    return source.text().substring(start, end);
  }

  /** The place from the start of this one to the end of the other. */
  public Span to(Span other) {
    return new Span(source, start, Math.max(end, other.end));
  }

  /** File, line and column, in the form that editors jump to. */
  @Override
  public String toString() {
    return source.name() + ":" + line() + ":" + column();
  }
}
