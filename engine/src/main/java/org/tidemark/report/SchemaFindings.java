package org.tidemark.report;

import static org.tidemark.report.SchemaTypes.anything;
import static org.tidemark.report.SchemaTypes.either;
import static org.tidemark.report.SchemaTypes.list;
import static org.tidemark.report.SchemaTypes.number;
import static org.tidemark.report.SchemaTypes.oneOrMore;
import static org.tidemark.report.SchemaTypes.text;
import static org.tidemark.report.SchemaTypes.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Vocabulary;

/**
 * What a schema says of findings: those of a vocabulary by name, with their options. A policy may
 * have names of its own beside them, which a schema cannot know.
 */
final class SchemaFindings {
  private final Vocabulary words;
  private final Object reading;
  private final Object stretch;

  SchemaFindings(Vocabulary words, Object reading, Object stretch) {
    this.words = words;
    this.reading = reading;
    this.stretch = stretch;
  }

  /** Findings and terms, each with what it should be. */
  Map<String, Object> given(Object anyOf, Object someOf) {
    Map<String, Object> properties = each(this::condition);
    properties.put("any-of", anyOf);
    properties.put("some-of", someOf);
    return SchemaTypes.of(
        "type",
        "object",
        "minProperties",
        1,
        "properties",
        properties,
        "additionalProperties",
        anyCondition());
  }

  /** The same over the fields of a list, whose names only the vocabulary's reader knows. */
  Map<String, Object> givenOfItem() {
    return SchemaTypes.of("type", "object", "minProperties", 1, "additionalProperties", true);
  }

  /** A list of conditions, none of which holds alternatives again. */
  Map<String, Object> alternatives() {
    return list(given(false, false), 1);
  }

  private Object anyCondition() {
    return either(List.of(text(), list(text(), 1), reading));
  }

  private Object condition(Finding finding) {
    Object options = word(options(finding));
    Object many = oneOrMore(options, options, 1);
    if (finding.domain() instanceof Domain.Measure) {
      return either(List.of(text(), list(options, 1), reading));
    }
    Object other =
        SchemaTypes.of(
            "type",
            "object",
            "properties",
            SchemaTypes.of("other-than", options),
            "required",
            List.of("other-than"),
            "additionalProperties",
            false);
    return either(List.of(many, other));
  }

  /** Findings, each with one option or more. */
  Map<String, Object> scope() {
    return each(
        finding -> {
          Object options = word(options(finding));
          return oneOrMore(options, options, 1);
        });
  }

  /** Findings with what was found. */
  Map<String, Object> found() {
    return SchemaTypes.of(
        "type", "object",
        "properties", each(this::found),
        "additionalProperties", either(List.of(text(), list(anything(), 1), stretch)));
  }

  private Object found(Finding finding) {
    Object options = word(options(finding));
    return finding.domain() instanceof Domain.Measure
        ? either(List.of(options, number(), list(options, 1), stretch))
        : oneOrMore(options, options, 1);
  }

  /** What an item of a list may hold in a field. */
  Object found(Domain domain) {
    Object options = word(domain.options().stream().map(Option::name).toList());
    return domain instanceof Domain.Measure
        ? either(List.of(options, number(), list(options, 1), stretch))
        : oneOrMore(options, options, 1);
  }

  private Map<String, Object> each(Function<Finding, Object> says) {
    Map<String, Object> properties = new LinkedHashMap<>();
    words.findings().forEach(f -> properties.put(f.name(), said(f, says.apply(f))));
    return properties;
  }

  private static Object said(Finding finding, Object schema) {
    Map<String, Object> all = SchemaTypes.of("description", finding.asks());
    ((Map<?, ?>) schema).forEach((k, v) -> all.put((String) k, v));
    return all;
  }

  private static List<String> options(Finding finding) {
    return finding.domain().options().stream().map(Option::name).toList();
  }
}
