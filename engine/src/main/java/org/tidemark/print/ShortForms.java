package org.tidemark.print;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Spells out, once on every card, the short forms that the card uses. */
final class ShortForms {
  /** Symbols of units, and pH, are words of the trade and need no spelling out. */
  private static final Map<String, String> WORDS =
      new TreeMap<>(Map.of("Fr", "French gauge, the outside size of a tube"));

  private ShortForms() {}

  static List<String> in(List<String> texts) {
    String all = String.join("\n", texts);
    return WORDS.entrySet().stream()
        .filter(e -> Pattern.compile("\\b" + e.getKey() + "\\b").matcher(all).find())
        .map(e -> e.getKey() + ": " + e.getValue())
        .toList();
  }
}
