package org.tidemark.yaml;

import org.tidemark.source.SourceText;

/** Tells running text from structure, on the raw line, before anything is parsed. */
final class RawProse {
  private static final int WORDS_OF_A_SENTENCE = 3;

  private RawProse() {}

  /**
   * Whether the offset lies in running text: behind the first colon or dash of its line, between
   * two letters or other signs of a text of several words. Anything else is structure, a name or a
   * number, where an unseen character changes what is meant.
   */
  static boolean around(SourceText source, int offset) {
    int line = source.lineAt(offset);
    String text = source.line(line);
    int column = source.columnAt(offset) - 1;
    String before = text.substring(0, column);
    int valueStart = Math.max(before.indexOf(": "), before.indexOf("- "));
    String value = valueStart < 0 ? before : before.substring(valueStart + 2);
    boolean continuation = valueStart < 0 && !text.contains(":") && !before.isBlank();
    boolean inside = (valueStart >= 0 || continuation) && !value.isBlank();
    String after = text.substring(Math.min(text.length(), column + 1));
    String whole = (value + " " + after).strip();
    return inside && !after.isBlank() && whole.split("[\\s\\u00A0]+").length >= WORDS_OF_A_SENTENCE;
  }
}
