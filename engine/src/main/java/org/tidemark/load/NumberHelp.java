package org.tidemark.load;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Typed;

/** Says why a text is not a plain number, and which number to write, where one can be made out. */
final class NumberHelp {
  /** What is longer is a text, and no number with something beside it. */
  private static final int LONGEST = 200;

  private static final String PLAIN = "(?:0|[1-9][0-9]{0,8})(?:\\.[0-9]{1,6})?";
  private static final Pattern NUMBER_IN_IT =
      Pattern.compile("(?<![0-9.])" + PLAIN + "(?![0-9]|\\.[0-9])");
  private static final Pattern COMMA =
      Pattern.compile(".*[0-9\\u0660-\\u0669][,\\u060C\\u066B\\u066C\\uFF0C].*");
  private static final Pattern SIMPLE_COMMA = Pattern.compile("(-?[0-9]+),([0-9]+)");
  private static final Pattern LIMIT =
      Pattern.compile(
          "(?=.*[0-9])(?:[<>=!~\\u2264-\\u2269\\u2A7D\\u2A7E\\u2A85\\u2A86\\u00B1\\u2248].*|.*\\bor (?:less|more|below|above|lower|higher)\\b.*|(?:up to|at least|at most|under|over|below|above|less than|more than)\\b.*)");
  private static final Pattern RANGE =
      Pattern.compile(
          "("
              + PLAIN
              + ")\\s*(?:-|\\p{Pd}|\\u2212|~|\\.\\.+|\\u2026|to|until)\\s*("
              + PLAIN
              + ").*");
  private static final Pattern OTHER_NOTATION =
      Pattern.compile(
          "[0-9.]+[eE][+-]?[0-9]+|0[xXbBoO][0-9a-fA-F]+.*|[0-9]+/[0-9]+|[0-9]+:[0-9:]+");
  private static final Pattern BESIDE_A_NUMBER =
      Pattern.compile(
          "(?:[^0-9.+\\p{Pd}\\u2212]*[^0-9.+\\s\\p{Pd}\\u2212]\\s*)?"
              + PLAIN
              + "(?:\\s*[^0-9.,_\\s\\p{No}\\u00B7\\u2022\\u2219\\u22C5:;][^0-9]*)?");
  private static final Pattern MENDABLE =
      Pattern.compile("([+\\p{Pd}\\u2212]?)0*([0-9]*)(?:[.\\u00B7\\u2022\\u2219\\u22C5]([0-9]*))?");

  private NumberHelp() {}

  static Diagnostic explain(Located<String> text, String unit) {
    String typed = text.value();
    if (typed.isEmpty()) {
      return notANumber(text, "no number is written here");
    }
    if (typed.length() > LONGEST) {
      return notANumber(text, Typed.shown(typed) + " is not a plain number");
    }
    if (COMMA.matcher(typed).matches()) {
      return comma(text);
    }
    Matcher range = RANGE.matcher(typed);
    if (range.matches()) {
      return range(text, range);
    }
    if (LIMIT.matcher(typed).matches()) {
      return limit(text);
    }
    if (!OTHER_NOTATION.matcher(typed).matches() && BESIDE_A_NUMBER.matcher(typed).matches()) {
      return unit(text, unit);
    }
    return notANumber(text, Typed.shown(typed) + " is not a plain number");
  }

  private static Diagnostic comma(Located<String> text) {
    Matcher simple = SIMPLE_COMMA.matcher(text.value());
    String help = "write one point before the decimals and nothing between thousands, such as 5.5";
    if (simple.matches()) {
      String point = simple.group(1) + "." + simple.group(2);
      String thousands = " for a decimal, " + simple.group(1) + simple.group(2) + " for thousands";
      help = "write " + point + (simple.group(2).length() == 3 ? thousands : " with a point");
    }
    return Diagnostic.error(
            DiagnosticCode.DECIMAL_COMMA, text.span(), Typed.shown(text.value()) + " has a comma")
        .help(help);
  }

  private static Diagnostic range(Located<String> text, Matcher range) {
    return error(text, " is a range, and one number is due")
        .help(
            "a range is two fields: at-least: " + range.group(1) + ", at-most: " + range.group(2));
  }

  private static Diagnostic limit(Located<String> text) {
    String alone = numberIn(text.value()).map(n -> "write " + n + " alone; ").orElse("");
    return error(text, " is a limit and not a number alone")
        .help(alone + "the limit goes into the field's name: at-most, below, at-least, above");
  }

  private static Diagnostic unit(Located<String> text, String unit) {
    String field = unit.isEmpty() ? "" : "; the unit here is " + unit + " already";
    return Diagnostic.error(
            DiagnosticCode.UNIT_IN_NUMBER,
            text.span(),
            Typed.shown(text.value()) + " is a number with something beside it")
        .help("write the number alone: " + numberIn(text.value()).orElse("5.5") + field);
  }

  private static Optional<String> numberIn(String typed) {
    Matcher number = NUMBER_IN_IT.matcher(typed);
    return number.find() ? Optional.of(number.group()) : Optional.empty();
  }

  private static Diagnostic error(Located<String> text, String what) {
    return Diagnostic.error(
        DiagnosticCode.NOT_A_NUMBER, text.span(), Typed.shown(text.value()) + what);
  }

  private static Diagnostic notANumber(Located<String> text, String message) {
    return Diagnostic.error(
            DiagnosticCode.NOT_A_NUMBER, text.span(), message + Typed.oddCharacter(text.value()))
        .help(
            mended(text.value())
                .map(n -> "write " + n)
                .orElse(
                    "write digits, and one point if there are decimals, such as 5.5; at most nine digits stand before the point and six behind it"));
  }

  /** The plain form of a number that has a plus sign, zeros or a point too many. */
  private static Optional<String> mended(String typed) {
    Matcher parts = MENDABLE.matcher(typed);
    if (!parts.matches() || typed.chars().noneMatch(c -> c >= '0' && c <= '9')) {
      return Optional.empty();
    }
    String whole = parts.group(2).isEmpty() ? "0" : parts.group(2);
    String decimals = parts.group(3);
    boolean point = decimals != null && !decimals.isEmpty();
    String size = point ? whole + "." + decimals : whole;
    boolean minus = !parts.group(1).isEmpty() && !parts.group(1).equals("+");
    String plain = minus && Scalars.isPlain("-" + size) ? "-" + size : size;
    return Scalars.isPlain(plain) && !plain.equals(typed) ? Optional.of(plain) : Optional.empty();
  }
}
