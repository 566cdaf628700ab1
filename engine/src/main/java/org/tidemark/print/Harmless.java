package org.tidemark.print;

/** Characters that may not reach a page: controls, direction marks and the marks used in here. */
final class Harmless {
  private static final char SHOWN_INSTEAD = '\uFFFD';

  private Harmless() {}

  /** The character itself, a space for any white space, or a visible mark in its place. */
  static char visible(char c) {
    if (Character.isWhitespace(c)) {
      return ' ';
    }
    return isHidden(c) ? SHOWN_INSTEAD : c;
  }

  /** Whether the character cannot be seen and may turn, hide or fake what stands around it. */
  static boolean isHidden(char c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.PRIVATE_USE
        || type == Character.UNASSIGNED
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
