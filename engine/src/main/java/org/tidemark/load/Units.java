package org.tidemark.load;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The one way in which each unit is written, and the other ways in which people write it. */
final class Units {
  /** Each unit, and behind it in small letters what is read as the same. */
  private static final Map<String, String> WRITTEN =
      Stream.of(
              "pH: ph",
              "mL: ml mls millilitre millilitres milliliter milliliters cc",
              "L: l litre litres liter liters",
              "cm: cm cms centimetre centimetres centimeter centimeters",
              "mm: mm millimetre millimetres millimeter millimeters",
              "Fr: fr french",
              "h: h hr hrs hour hours hourly",
              "min: min mins minute minutes",
              "s: s sec secs second seconds",
              "days: day days",
              "weeks: week weeks",
              "months: month months",
              "years: year years",
              "degrees: degree degrees deg",
              "tries: try tries",
              "kg: kg kgs kilogram kilograms",
              "g: g gram grams",
              "mg: mg mgs milligram milligrams",
              "%: % percent")
          .flatMap(Units::spellings)
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  /** Any of them in a text, longest first, so that none hides behind its beginning. */
  static final String ANY =
      Stream.concat(WRITTEN.keySet().stream(), Stream.of("per cent"))
          .filter(unit -> !unit.equals("ph") && !unit.equals("try") && !unit.equals("second"))
          .sorted((a, b) -> b.length() - a.length())
          .map(Pattern::quote)
          .collect(Collectors.joining("|"));

  private static final Map<String, Integer> WORDS =
      Map.ofEntries(
          Map.entry("one", 1),
          Map.entry("two", 2),
          Map.entry("three", 3),
          Map.entry("four", 4),
          Map.entry("five", 5),
          Map.entry("six", 6),
          Map.entry("seven", 7),
          Map.entry("eight", 8),
          Map.entry("nine", 9),
          Map.entry("ten", 10),
          Map.entry("twelve", 12),
          Map.entry("fifteen", 15),
          Map.entry("twenty", 20),
          Map.entry("thirty", 30),
          Map.entry("forty", 40),
          Map.entry("fifty", 50),
          Map.entry("sixty", 60),
          Map.entry("ninety", 90));

  /** A number in digits or as a word. */
  static final String NUMBER =
      "(?:[0-9]{1,9}(?:\\.[0-9]{1,6})?|"
          + WORDS.keySet().stream()
              .sorted((a, b) -> b.length() - a.length())
              .collect(Collectors.joining("|"))
          + ")";

  private Units() {}

  private static Stream<Map.Entry<String, String>> spellings(String line) {
    String[] parts = line.split(": ", 2);
    return Stream.of(parts[1].split(" ")).map(s -> Map.entry(s, parts[0]));
  }

  /** The unit that is meant; what is no unit that is known stays as it is. */
  static String meant(String typed) {
    return typed.equals("per cent")
        ? "%"
        : WRITTEN.getOrDefault(typed.toLowerCase(Locale.ROOT), typed);
  }

  /** A number of a text in digits. */
  static String digits(String number) {
    Integer word = WORDS.get(number.toLowerCase(Locale.ROOT));
    return word == null ? number : Integer.toString(word);
  }
}
