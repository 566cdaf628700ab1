package org.tidemark.yaml;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes one text: plain where it reads the same, in double quotes otherwise. */
final class Scalar {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}0-9(./][\\p{L}\\p{N} _.,;'()/%+*=<>~^°µ{}\\[\\]?!-]*");
  private static final Pattern PLAIN_IN_BRACES =
      Pattern.compile("[\\p{L}0-9./-][\\p{L}\\p{N}_./%+-]*");

  /** What other readers of YAML take for something else than text. */
  private static final Pattern OTHERWISE_READ =
      Pattern.compile("(?i)yes|no|on|off|true|false|null|y|n|~|[0-9]+(:[0-9]+)+");

  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?|[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern LIKE_A_NUMBER = Pattern.compile("[-+.]?[0-9][0-9.eExXoO_-]*");

  private Scalar() {}

  /** A text of one line. */
  static String of(YamlText text, boolean inBraces) {
    String value = text.text();
    if (NUMBER.matcher(value).matches() || text.isMissing()) {
      return value;
    }
    boolean plain = (inBraces ? PLAIN_IN_BRACES : PLAIN).matcher(value).matches();
    boolean other =
        OTHERWISE_READ.matcher(value).matches() || LIKE_A_NUMBER.matcher(value).matches();
    return plain && !other && !value.endsWith(" ") ? value : quoted(value);
  }

  /** A text of one line with a comment behind it, which plain prose would seem to lose. */
  static String before(String comment, YamlText text) {
    String value = of(text, false);
    boolean plain = value.equals(text.text()) && !NUMBER.matcher(value).matches();
    boolean quotes = !comment.isEmpty() && text.style() == YamlText.Style.QUOTED;
    return plain && quotes ? quoted(value) : value;
  }

  /** The name of a field: plain wherever it can be, since names are read as text. */
  static String name(YamlText name, boolean inBraces) {
    boolean plain = (inBraces ? PLAIN_IN_BRACES : PLAIN).matcher(name.text()).matches();
    return plain && !name.text().endsWith(" ") ? name.text() : quoted(name.text());
  }

  private static String quoted(String value) {
    boolean simple = value.indexOf('"') < 0 && value.indexOf('\\') < 0;
    return simple ? '"' + value + '"' : "'" + value.replace("'", "''") + "'";
  }

  /** A text over several lines keeps its lines; only their margin changes. */
  static String block(YamlText text, String margin) {
    List<String> lines = text.span().text().lines().toList();
    int least =
        lines.stream()
            .skip(1)
            .filter(l -> !l.isBlank())
            .mapToInt(l -> l.length() - l.stripLeading().length())
            .min()
            .orElse(0);
    return lines.get(0).strip()
        + lines.stream()
            .skip(1)
            .map(l -> "\n" + (l.isBlank() ? "" : margin + l.substring(least)))
            .collect(Collectors.joining())
        + (keepsItsEnd(text) ? "\n".repeat(linesAtTheEnd(text) - 1) : "");
  }

  /** Whether blank lines behind a text belong to it. */
  static boolean keepsItsEnd(YamlText text) {
    String head = text.span().text().lines().findFirst().orElse("");
    return head.startsWith("|+") || head.startsWith(">+");
  }

  private static int linesAtTheEnd(YamlText text) {
    String value = text.text();
    int end = value.length();
    while (end > 0 && value.charAt(end - 1) == '\n') {
      end--;
    }
    return value.length() - end;
  }
}
