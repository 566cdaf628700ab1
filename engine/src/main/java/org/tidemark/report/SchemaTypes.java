package org.tidemark.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The small pieces that a schema is made of. A text may look like a number or a truth value to a
 * reader of YAML, so texts are of several types; nothing is never one of them.
 */
final class SchemaTypes {
  private static final String NUMBER = "(?!-0+(\\.0+)?\\s*$)-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,6})?";
  private static final String DAY =
      "(19|[2-9][0-9])[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])";
  private static final String TIME = "([01][0-9]|2[0-3]):[0-5][0-9]";
  static final String NAME = "^[a-z][a-z0-9]*(-[a-z0-9]+)*$";

  private SchemaTypes() {}

  /** A piece with its fields in this order. */
  static Map<String, Object> of(Object... fields) {
    Map<String, Object> piece = new LinkedHashMap<>();
    for (int i = 0; i < fields.length; i += 2) {
      piece.put((String) fields[i], fields[i + 1]);
    }
    return piece;
  }

  static Map<String, Object> anything() {
    return of("type", List.of("string", "number", "boolean"));
  }

  static Map<String, Object> text() {
    return of("type", List.of("string", "number", "boolean"), "pattern", "\\S");
  }

  static Map<String, Object> word(List<String> words) {
    return of("enum", words);
  }

  static Map<String, Object> either(List<?> those) {
    return of("anyOf", those);
  }

  static Map<String, Object> list(Object items, int atLeast) {
    return atLeast == 0
        ? of("type", "array", "items", items)
        : of("type", "array", "items", items, "minItems", atLeast);
  }

  /** One, or a list of them. */
  static Map<String, Object> oneOrMore(Object one, Object item, int atLeast) {
    return either(List.of(one, list(item, atLeast)));
  }

  static Map<String, Object> number() {
    return either(List.of(of("type", "number"), pattern(NUMBER)));
  }

  static Map<String, Object> limit() {
    return either(List.of(of("type", "number"), pattern(NUMBER + "|[a-z-][a-z0-9-]*")));
  }

  static Map<String, Object> count() {
    return either(List.of(of("type", "integer", "minimum", 1), pattern("[1-9][0-9]{0,8}")));
  }

  static Map<String, Object> name() {
    return of("type", "string", "pattern", NAME);
  }

  static Map<String, Object> day() {
    return pattern(DAY);
  }

  static Map<String, Object> time() {
    return pattern(TIME);
  }

  static Map<String, Object> moment() {
    return pattern(DAY + " +" + TIME);
  }

  private static Map<String, Object> pattern(String inside) {
    return of("type", "string", "pattern", "^\\s*(" + inside + ")\\s*$");
  }
}
