package org.tidemark.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds numbers and their units in a query. A decimal comma is read as a point. */
final class NumberReader {
  static final String PH = "ph";

  private static final BigDecimal HIGHEST_PH = BigDecimal.valueOf(14);
  private static final Pattern COMMA = Pattern.compile("(?<!\\d)(\\d{1,2}),(\\d{1,2})(?!\\d)");
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\p{L}\\d.])(\\d{1,6}(?:\\.\\d{1,3})?)\\s?(\\p{L}{1,8})?");

  /** What people write for a unit, and its one name. */
  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("ml", "ml"),
          Map.entry("mls", "ml"),
          Map.entry("cc", "ml"),
          Map.entry("ccs", "ml"),
          Map.entry("cm", "cm"),
          Map.entry("cms", "cm"),
          Map.entry("fr", "fr"),
          Map.entry("fg", "fr"),
          Map.entry("french", "fr"),
          Map.entry("ph", PH),
          Map.entry("kg", "kg"),
          Map.entry("kcal", "kcal"),
          Map.entry("mmhg", "mmhg"),
          Map.entry("h", "hour"),
          Map.entry("hr", "hour"),
          Map.entry("hrs", "hour"),
          Map.entry("hour", "hour"),
          Map.entry("hours", "hour"),
          Map.entry("day", "day"),
          Map.entry("days", "day"),
          Map.entry("degrees", "degree"));

  /** Words that say a number near them is a pH although its name was not typed. */
  private static final Pattern ABOUT_PH = Pattern.compile("\\b(?:ph|strip|strips|acid|acidic)\\b");

  /** A number right after the name is a pH, even one that no strip shows. */
  private static final Pattern NAMED_PH = Pattern.compile("\\bph ?(?:is|was|of|=|:)? ?$");

  private NumberReader() {}

  /** The query with decimal points where decimal commas were typed. */
  static String points(String typed) {
    return COMMA.matcher(typed).replaceAll("$1.$2");
  }

  static List<QueryReading.Measured> numbers(String typed) {
    String text = glued(points(typed).toLowerCase(Locale.ROOT));
    boolean aboutPh = ABOUT_PH.matcher(text).find();
    List<QueryReading.Measured> numbers = new ArrayList<>();
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      BigDecimal value = new BigDecimal(number.group(1));
      String unit = UNITS.getOrDefault(number.group(2) == null ? "" : number.group(2), "");
      boolean named = NAMED_PH.matcher(text.substring(0, number.start())).find();
      boolean ph = unit.isEmpty() && (named || (aboutPh && value.compareTo(HIGHEST_PH) <= 0));
      numbers.add(new QueryReading.Measured(value, ph ? PH : unit));
    }
    return numbers;
  }

  /** The name and the number apart: ph5.5 is pH 5.5. */
  private static String glued(String text) {
    return text.replaceAll("\\bph(?=\\d)", "ph ");
  }
}
