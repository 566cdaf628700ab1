package org.tidemark.source;

import java.util.Locale;

/** Characters that nobody sees on a screen, and their names. */
public final class Invisible {
  private Invisible() {}

  /** Whether a reader would not see this character, or would take it for an ordinary space. */
  public static boolean isInvisible(char c) {
    int type = Character.getType(c);
    boolean space = type == Character.SPACE_SEPARATOR && c != ' ';
    boolean control = type == Character.CONTROL && c != '\n' && c != '\r' && c != '\t';
    boolean lineBreak = type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    return space || control || lineBreak || type == Character.FORMAT;
  }

  /** Whether it stands for a space in running text. */
  public static boolean isSpace(char c) {
    return Character.getType(c) == Character.SPACE_SEPARATOR;
  }

  /** The character's published name and number, such as {@code no-break space (U+00A0)}. */
  public static String name(char c) {
    String published = Character.getName(c);
    String words = published == null ? "a character" : published.toLowerCase(Locale.ROOT);
    return words + String.format(Locale.ROOT, " (U+%04X)", (int) c);
  }
}
