package org.tidemark.print;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * The part of a file that is a template: the text Velocity sees, and the way back from Velocity's
 * lines and columns to the places of the file.
 */
final class TemplateBody {
  /**
   * Stands for the number signs of a heading while Velocity, to which they are a comment, reads.
   */
  private static final char HEADING_MARK = '\uE000';

  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6}(?=[ \\r\\n]|$)");
  private static final int TAB_STOP = 8;

  private final Span span;
  private final SourceText own;
  private final String text;

  TemplateBody(Span span, TemplateKind kind) {
    this.span = span;
    this.own = SourceText.of(span.source().name(), span.text());
    this.text = kind.headings ? hidden(span.text()) : span.text();
  }

  private static String hidden(String text) {
    Matcher heading = HEADING.matcher(text);
    return heading.replaceAll(
        found -> String.valueOf(HEADING_MARK).repeat(found.end() - found.start()));
  }

  /** What Velocity reads; as long as the original, character by character. */
  String text() {
    return text;
  }

  Span span() {
    return span;
  }

  /** Filled text with its headings back. */
  static String shown(String filled) {
    return filled.replace(HEADING_MARK, '#');
  }

  /** The place of a stretch of the body, counted from the body's first character. */
  Span at(int start, int end) {
    int last = span.text().length();
    int from = Math.min(Math.max(start, 0), last);
    int to = Math.min(Math.max(end, from), last);
    return span.source().span(span.start() + from, span.start() + to);
  }

  /** The offset in the body of one of Velocity's places; it counts a tab as up to eight columns. */
  int offset(int line, int column) {
    int known = Math.min(Math.max(line, 1), own.lineCount());
    String there = own.line(known);
    int reached = 0;
    int i = 0;
    for (; i < there.length(); i++) {
      reached = there.charAt(i) == '\t' ? reached + TAB_STOP - reached % TAB_STOP : reached + 1;
      if (reached >= column) {
        break;
      }
    }
    return own.startOfLine(known) + i;
  }
}
