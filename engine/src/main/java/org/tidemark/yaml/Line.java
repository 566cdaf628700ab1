package org.tidemark.yaml;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * A line taken apart by eye: what stands before its value, and its value. Used only to explain a
 * line that cannot be parsed.
 *
 * @param key where its name or its value begins, after spaces and dashes
 * @param value its value, up to the last visible sign
 * @param named whether a dash or a name and a colon stand before the value
 */
record Line(int key, Span value, boolean named) {
  private static final Pattern PARTS =
      Pattern.compile(
          "([ ]*)((?:-[ ]+)*)((?:\"[^\"]*\"|'[^']*'|[^\\s#:'\"\\[{][^:#]*?)[ ]*:(?:[ ]+|$))?(.*?)[ ]*");

  static Line of(SourceText source, CharSequence clean, int number) {
    int start = source.startOfLine(number);
    Matcher parts = PARTS.matcher(clean.subSequence(start, source.endOfLine(number)));
    if (!parts.matches()) {
      return new Line(start, source.span(start, start), false);
    }
    boolean named = parts.group(3) != null || !parts.group(2).isEmpty();
    return new Line(
        start + parts.end(2),
        source.span(start + parts.start(4), start + parts.end(4)),
        named && !parts.group(4).isEmpty());
  }
}
