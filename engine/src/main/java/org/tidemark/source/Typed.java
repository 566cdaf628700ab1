package org.tidemark.source;

import java.util.OptionalInt;

/** What somebody typed, as messages show it. */
public final class Typed {
  private static final int LONGEST = 60;

  private Typed() {}

  /** In backticks, and cut when it is long. */
  public static String shown(String text) {
    String line = text.replaceAll("\\s+", " ");
    boolean whole = line.codePointCount(0, line.length()) <= LONGEST;
    return "`"
        + (whole ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "...")
        + "`";
  }

  /** In quotes that YAML reads back as the very same text; quotes already round it are dropped. */
  public static String quoted(String text) {
    String bare = withoutQuotes(text.strip());
    if (bare.indexOf('"') < 0 && bare.indexOf('\\') < 0) {
      return '"' + bare + '"';
    }
    return "'" + bare.replace("'", "''") + "'";
  }

  private static String withoutQuotes(String text) {
    boolean pair = text.length() > 1 && text.charAt(0) == text.charAt(text.length() - 1);
    boolean quotes = pair && (text.charAt(0) == '"' || text.charAt(0) == '\'');
    return quotes ? text.substring(1, text.length() - 1) : text;
  }

  /**
   * A word on the first character that is not on a plain keyboard, since one that looks like
   * another cannot be told from it by eye; empty when there is none.
   */
  public static String oddCharacter(String text) {
    OptionalInt odd = text.codePoints().filter(c -> c > '~').findFirst();
    return odd.isPresent() ? "; it holds " + Invisible.name(odd.getAsInt()) : "";
  }
}
