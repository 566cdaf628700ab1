package org.tidemark.report;

import static org.tidemark.report.SchemaTypes.either;
import static org.tidemark.report.SchemaTypes.list;
import static org.tidemark.report.SchemaTypes.oneOrMore;
import static org.tidemark.report.SchemaTypes.text;
import static org.tidemark.report.SchemaTypes.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.tidemark.load.Holds;
import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.load.Part;
import org.tidemark.model.ListKind;
import org.tidemark.model.Vocabulary;

/**
 * A JSON Schema (draft 2020-12) of a kind of file, made from the declared language and a
 * vocabulary, so that an editor can complete and check while somebody types. It sees each field by
 * itself; names that must stand elsewhere, numbers that must fit and whatever else takes the whole
 * policy are for the loader.
 */
public final class LanguageSchema {
  private final Vocabulary words;
  private final SchemaFindings findings;
  private final Map<String, Object> parts = new LinkedHashMap<>();

  /**
   * A list of a policy that holds nothing is a slip; of a worked case it says that nothing is so.
   */
  private final int fewest;

  private LanguageSchema(Vocabulary words, int fewest) {
    this.words = words;
    this.fewest = fewest;
    this.findings =
        new SchemaFindings(words, group(Language.reading()), group(OtherFiles.stretch()));
  }

  /** The schema of a file that holds this part. */
  public static String of(Part file, Vocabulary words) {
    LanguageSchema schema = new LanguageSchema(words, file.equals(Language.policy()) ? 1 : 0);
    Map<String, Object> root =
        SchemaTypes.of(
            "$schema",
            "https://json-schema.org/draft/2020-12/schema",
            "$id",
            "urn:tidemark:schema:" + id(file),
            "title",
            title(file),
            "$ref",
            "#/$defs/" + id(file));
    schema.group(file);
    root.put("$defs", schema.parts);
    return Json.tree(root);
  }

  /** The schema of a file of findings: alone, or with the question and the tube's record. */
  public static String ofFindings(Vocabulary words) {
    LanguageSchema schema = new LanguageSchema(words, 0);
    Part file = OtherFiles.asked();
    List<Map<String, Object>> named =
        file.names().stream().map(n -> SchemaTypes.of("required", List.of(n))).toList();
    Map<String, Object> root =
        SchemaTypes.of(
            "$schema", "https://json-schema.org/draft/2020-12/schema",
            "$id", "urn:tidemark:schema:" + id(file),
            "title", title(file),
            "if", either(named),
            "then", schema.group(file),
            "else", schema.plain(Holds.Plain.FINDINGS));
    root.put("$defs", schema.parts);
    return Json.tree(root);
  }

  private static String title(Part file) {
    String called = file.called();
    return called.substring(0, 1).toUpperCase(Locale.ROOT) + called.substring(1);
  }

  /** A part's name as one word. */
  private static String id(Part part) {
    return part.called().replaceAll("^(a|an|the) ", "").replace("`", "").replace(' ', '-');
  }

  /** A reference to a part, which is written once. */
  private Map<String, Object> group(Part part) {
    String id = id(part);
    if (!parts.containsKey(id)) {
      parts.put(id, Map.of());
      parts.put(id, whole(part));
    }
    return SchemaTypes.of("$ref", "#/$defs/" + id);
  }

  private Map<String, Object> whole(Part part) {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Part.Field field : part.fields()) {
      Map<String, Object> property = SchemaTypes.of("description", field.says());
      property.putAll(holds(field.holds()));
      properties.put(field.name(), property);
    }
    if (part.findings()) {
      properties.putAll(findings.scope());
    }
    Map<String, Object> whole = SchemaTypes.of("type", "object", "properties", properties);
    List<String> required =
        part.fields().stream()
            .filter(f -> f.need() == Part.Need.ALWAYS)
            .map(Part.Field::name)
            .toList();
    if (!required.isEmpty()) {
      whole.put("required", required);
    }
    whole.put("additionalProperties", false);
    if (!part.limits().isEmpty()) {
      whole.put("allOf", part.limits().stream().map(SchemaLimits::of).toList());
    }
    return whole;
  }

  private Map<String, Object> holds(Holds holds) {
    if (holds instanceof Holds.Plain plain) {
      return plain(plain);
    } else if (holds instanceof Holds.Word word) {
      return word(word.words());
    } else if (holds instanceof Holds.Words some) {
      return oneOrMore(word(some.words()), word(some.words()), 0);
    } else if (holds instanceof Holds.Group group) {
      return group(group.part());
    } else if (holds instanceof Holds.ListOf list) {
      return list(holds(list.item()), 0);
    } else if (holds instanceof Holds.Named named) {
      return named(named);
    }
    return either(((Holds.Either) holds).those().stream().map(this::holds).toList());
  }

  private Map<String, Object> named(Holds.Named named) {
    Map<String, Object> schema =
        SchemaTypes.of("type", "object", "additionalProperties", holds(named.each()));
    if (named.spelt()) {
      schema.put("propertyNames", SchemaTypes.of("pattern", SchemaTypes.NAME));
    }
    return schema;
  }

  private Map<String, Object> plain(Holds.Plain plain) {
    return switch (plain) {
      case TEXT -> text();
      case TEXTS -> oneOrMore(text(), text(), fewest);
      case SOME_TEXTS -> oneOrMore(text(), text(), 1);
      case NAME -> SchemaTypes.name();
      case NUMBER -> SchemaTypes.number();
      case COUNT -> SchemaTypes.count();
      case DAY -> SchemaTypes.day();
      case TIME -> SchemaTypes.time();
      case MOMENT -> SchemaTypes.moment();
      case LIMIT -> SchemaTypes.limit();
      case GIVEN -> shared("condition", this::given);
      case GIVEN_OF_ITEM -> findings.givenOfItem();
      case ALTERNATIVES -> shared("alternatives", findings::alternatives);
      case SCOPE ->
          SchemaTypes.of(
              "type", "object", "properties", findings.scope(), "additionalProperties", false);
      case FINDINGS -> shared("findings", findings::found);
      case FOUND -> SchemaTypes.anything();
      case RECORD -> shared("record-of-a-tube", this::record);
    };
  }

  private Map<String, Object> given() {
    return findings.given(shared("alternatives", findings::alternatives), group(Language.someOf()));
  }

  /** Something that stands in many places, written once. */
  private Map<String, Object> shared(String id, Supplier<Object> maker) {
    if (!parts.containsKey(id)) {
      parts.put(id, Map.of());
      parts.put(id, maker.get());
    }
    return SchemaTypes.of("$ref", "#/$defs/" + id);
  }

  private Map<String, Object> record() {
    Map<String, Object> properties = SchemaTypes.of("now", SchemaTypes.moment());
    for (ListKind kind : words.lists()) {
      properties.put(kind.name(), list(item(kind), 1));
    }
    properties.put("events", list(group(OtherFiles.happened()), 0));
    return SchemaTypes.of(
        "type", "object", "properties", properties, "additionalProperties", false);
  }

  private Map<String, Object> item(ListKind kind) {
    Map<String, Object> properties = SchemaTypes.of("at", SchemaTypes.moment());
    kind.times().forEach(time -> properties.put(time, SchemaTypes.moment()));
    kind.fields().forEach((name, domain) -> properties.put(name, findings.found(domain)));
    return SchemaTypes.of(
        "type",
        "object",
        "properties",
        properties,
        "minProperties",
        1,
        "additionalProperties",
        false);
  }
}
