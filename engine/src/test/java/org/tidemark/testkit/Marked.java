package org.tidemark.testkit;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.tidemark.source.Invisible;

/**
 * Characters that cannot be seen, written so that they can: {@code ‹NBSP›} or {@code ‹U+00A0›}, in
 * both directions.
 */
public final class Marked {
  private static final Pattern MARK = Pattern.compile("\u2039([A-Z]+|U\\+[0-9A-F]{4,6})\u203A");
  private static final Map<String, Integer> NAMES =
      Map.of(
          "NBSP", 0xA0, "ZWSP", 0x200B, "SHY", 0xAD, "BOM", 0xFEFF, "TAB", 0x9, "CR", 0xD, "LF",
          0xA, "SPACE", 0x20);

  private Marked() {}

  /** The text that is meant. */
  public static String read(String marked) {
    return MARK.matcher(marked).replaceAll(Marked::character);
  }

  private static String character(MatchResult mark) {
    String name = mark.group(1);
    int c = name.startsWith("U+") ? Integer.parseInt(name.substring(2), 16) : named(name);
    return java.util.regex.Matcher.quoteReplacement(Character.toString(c));
  }

  private static int named(String name) {
    Integer c = NAMES.get(name);
    if (c == null) {
      throw new IllegalArgumentException("no character is called " + name);
    }
    return c;
  }

  /** The text as a person can see it. */
  public static String write(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.append(visible(c)));
    return out.toString();
  }

  private static String visible(int c) {
    boolean unseen = Invisible.isInvisible(c) || Invisible.isNoCharacter(c) || c < ' ';
    if (!unseen) {
      return Character.toString(c);
    }
    return "\u2039"
        + NAMES.entrySet().stream()
            .filter(e -> e.getValue() == c)
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseGet(() -> String.format(Locale.ROOT, "U+%04X", c))
        + "\u203A";
  }
}
