package org.tidemark.source;

import java.util.Locale;

/** Characters that nobody sees on a screen, and their names. */
public final class Invisible {
  /**
   * Letters, symbols and marks that show nothing, though their general category does not say so.
   */
  private static final String BLANKS = "\u034F\u115F\u1160\u17B4\u17B5\u2800\u3164\uFFA0";

  private Invisible() {}

  /** Whether a reader would not see this character, or would take it for an ordinary space. */
  public static boolean isInvisible(int c) {
    int type = Character.getType(c);
    boolean control = type == Character.CONTROL && c != '\n' && c != '\r' && c != '\t';
    boolean lineBreak = type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    boolean blank = BLANKS.indexOf(c) >= 0 || isVariation(c);
    return control || lineBreak || blank || type == Character.FORMAT || (isSpace(c) && c != ' ');
  }

  /** Whether it stands for a space in running text. */
  public static boolean isSpace(int c) {
    return Character.getType(c) == Character.SPACE_SEPARATOR;
  }

  /**
   * Whether running text reads the same without it: a place for a line break, or a look asked for.
   */
  public static boolean isSoft(int c) {
    return c == 0x00AD || c == 0x200B || c == 0x2060 || isVariation(c);
  }

  private static boolean isVariation(int c) {
    boolean mongolian = c >= 0x180B && c <= 0x180D;
    return mongolian || (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF);
  }

  /** Whether it is no character at all: half of a pair, or a code that never stands for one. */
  public static boolean isNoCharacter(int c) {
    return Character.getType(c) == Character.SURROGATE
        || (c & 0xFFFE) == 0xFFFE
        || (c >= 0xFDD0 && c <= 0xFDEF);
  }

  /** The character's published name and number, such as {@code no-break space (U+00A0)}. */
  public static String name(int c) {
    String published = Character.getName(c);
    String words =
        published == null ? "a code that is no character" : published.toLowerCase(Locale.ROOT);
    return words + String.format(Locale.ROOT, " (U+%04X)", c);
  }
}
