package org.tidemark.load;

import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlText;

/**
 * Finds notation that has been misread, and says what to write. After the Institute for Safe
 * Medication Practices, List of Error-Prone Abbreviations, Symbols, and Dose Designations.
 */
final class UnsafeNotation {
  private static final String UNIT = "(mL|ml|mls|cm|mm|kg|mg|g|Fr|h|min|hours?|minutes?)";

  /** A notation, why it is misread, and what to write in its place. */
  private record Unsafe(Pattern pattern, String why, Function<MatchResult, String> instead) {}

  private static final List<Unsafe> ALL =
      List.of(
          new Unsafe(
              Pattern.compile(
                  "(?<![0-9])[0-9]{1,9}(?:\\.[0-9]{1,9})? ?(?:cc|c\\.c\\.)(?![\\p{L}0-9])"),
              "cc can be read as zeros or as a letter",
              m -> number(m.group()) + " mL"),
          new Unsafe(
              Pattern.compile("(?<![0-9.])([0-9]{1,9})\\.0{1,9} ?" + UNIT + "(?![\\p{L}0-9])"),
              "the point can be overlooked, and the number is then ten times as large",
              m -> m.group(1) + " " + m.group(2)),
          new Unsafe(
              Pattern.compile(
                  "(?<![\\p{L}0-9.])([0-9]{1,9}(?:\\.[0-9]{0,8}[1-9])?)"
                      + UNIT
                      + "(?![\\p{L}0-9])"),
              "the first letter of the unit can be read as a digit",
              m -> m.group(1) + " " + m.group(2)),
          new Unsafe(
              Pattern.compile("[\\u00B0\\u00BA]"),
              "the sign for degrees can be read as a zero",
              m -> "degrees"),
          new Unsafe(
              Pattern.compile("(?<![0-9.])\\.[0-9]{1,9}"),
              "the point can be overlooked, and the number is then ten times as large or more",
              m -> "0" + m.group()),
          new Unsafe(
              Pattern.compile("(?<![0-9])[0-9]{1,9},[0-9]{1,2}(?![0-9])"),
              "a comma in a number is read in two ways",
              m -> m.group().replace(',', '.') + ", or put a space behind the comma"),
          new Unsafe(
              Pattern.compile("[0-9] ?/ ?[\\p{L}0-9]|(?<!\\p{L})" + UNIT + " ?/ ?\\p{L}"),
              "the slash can be read as the digit one",
              m -> "words, such as: per, or, to"),
          new Unsafe(
              Pattern.compile("(?<![\\p{L}0-9])[?\\u00BF][0-9]"),
              "a sign before this number may have been lost",
              m -> "what was meant in words, such as: or less, or more"),
          new Unsafe(
              Pattern.compile("[\\u2191\\u2193]"),
              "an arrow is taken for its opposite or for a digit",
              m -> "words, such as: rises, falls"),
          new Unsafe(
              Pattern.compile("[\\u00B5\\u03BC]g"),
              "the first letter is taken for an m",
              m -> "mcg"),
          new Unsafe(
              Pattern.compile("[<>\\u2264\\u2265]"),
              "this sign is taken for its opposite",
              m -> "words, such as: less than, or less, more than, or more"));

  private UnsafeNotation() {}

  private static String number(String typed) {
    return typed.replaceAll("[^0-9.].*", "");
  }

  static void check(YamlText text, Problems problems) {
    for (Unsafe unsafe : ALL) {
      Matcher found = unsafe.pattern().matcher(text.text());
      while (found.find()) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNSAFE_NOTATION,
                    ProseChecks.at(text, found),
                    Typed.shown(found.group()) + " is easily misread: " + unsafe.why())
                .help("write " + unsafe.instead().apply(found)));
      }
    }
  }
}
