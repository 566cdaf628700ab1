package org.tidemark.layer;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.PolicyValue;

/** Prints a policy's numbers as people read them: the number, then its unit as a word. */
final class Printed {
  private static final Pattern NAME_IN_BRACES = Pattern.compile("\\{([^{}]*)\\}");
  private static final Map<String, String> UNIT_WORDS =
      Map.of(
          "min", "minute", "h", "hour", "s", "second", "days", "day", "weeks", "week", "tries",
          "try", "degrees", "degree");

  private final EffectivePolicy policy;

  Printed(EffectivePolicy policy) {
    this.policy = policy;
  }

  String fill(String text) {
    if (text.indexOf('{') < 0) {
      return text;
    }
    Matcher names = NAME_IN_BRACES.matcher(text);
    return names.replaceAll(
        found ->
            Matcher.quoteReplacement(
                policy.value(found.group(1)).map(this::print).orElse(found.group())));
  }

  String print(PolicyValue value) {
    PolicyValue.Content content = value.content();
    if (content instanceof PolicyValue.Single single) {
      return withUnit(number(single.number(), value.unit()), single.number(), value.unit());
    }
    if (content instanceof PolicyValue.Range range) {
      String both =
          number(range.atLeast(), value.unit()) + " to " + number(range.atMost(), value.unit());
      return withUnit(both, range.atMost(), value.unit());
    }
    if (content instanceof PolicyValue.Window window) {
      return time(window.from()) + " to " + time(window.until());
    }
    return "not stated";
  }

  /**
   * A number with as many decimals as the readings that it is compared with, so that a limit of 5
   * reads 5.0 on a half-unit strip.
   */
  private String number(BigDecimal number, String unit) {
    return policy.vocabulary().findings().stream()
        .map(Finding::domain)
        .filter(d -> d instanceof Domain.Measure m && m.unit().equals(unit) && unit.equals("pH"))
        .findFirst()
        .map(d -> ((Domain.Measure) d).print(number))
        .orElseGet(number::toPlainString);
  }

  private static String withUnit(String number, BigDecimal amount, String unit) {
    if (unit.isEmpty() || unit.equals("pH")) {
      return number;
    }
    String word = UNIT_WORDS.get(unit);
    if (word == null) {
      return number + " " + unit;
    }
    return number + " " + (amount.compareTo(BigDecimal.ONE) == 0 ? word : plural(word));
  }

  private static String plural(String word) {
    return word.endsWith("y") && !word.endsWith("ay")
        ? word.substring(0, word.length() - 1) + "ies"
        : word + "s";
  }

  private static String time(LocalTime time) {
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }
}
