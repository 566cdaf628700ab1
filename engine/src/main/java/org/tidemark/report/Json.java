package org.tidemark.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes JSON, one field a line, always with the same line ends. A stream of tokens and no binding
 * to classes: field names are a promise and never follow a rename, and start-up stays short.
 */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private final JsonGenerator generator;

  private Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** Writes something. */
  interface Writing {
    void to(Json json) throws IOException;
  }

  /** Writes one of several things. */
  interface Each<T> {
    void to(Json json, T item) throws IOException;
  }

  /** An object as text, with a line end behind it. */
  static String object(Writing fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      generator.setPrettyPrinter(printer());
      Json json = new Json(generator);
      json.braces(fields);
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory failed", impossible);
    }
    return text.append('\n').toString();
  }

  /** Maps, lists, texts, whole numbers and truth values as text, with a line end behind it. */
  static String tree(Map<String, Object> root) {
    return object(json -> json.fields(root));
  }

  private void fields(Map<?, ?> fields) throws IOException {
    for (Map.Entry<?, ?> field : fields.entrySet()) {
      generator.writeFieldName((String) field.getKey());
      node(field.getValue());
    }
  }

  private void node(Object node) throws IOException {
    if (node instanceof Map<?, ?> map) {
      braces(json -> json.fields(map));
    } else if (node instanceof List<?> list) {
      generator.writeStartArray();
      for (Object item : list) {
        node(item);
      }
      generator.writeEndArray();
    } else if (node instanceof Integer number) {
      generator.writeNumber(number);
    } else if (node instanceof Boolean flag) {
      generator.writeBoolean(flag);
    } else {
      generator.writeString((String) node);
    }
  }

  private static DefaultPrettyPrinter printer() {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    return new DefaultPrettyPrinter(separators)
        .withObjectIndenter(INDENTER)
        .withArrayIndenter(INDENTER);
  }

  private void braces(Writing fields) throws IOException {
    generator.writeStartObject();
    fields.to(this);
    generator.writeEndObject();
  }

  void object(String name, Writing fields) throws IOException {
    generator.writeFieldName(name);
    braces(fields);
  }

  void text(String name, String value) throws IOException {
    generator.writeStringField(name, value);
  }

  /** Present or null, never left out: a reader may rely on every field. */
  void text(String name, Optional<String> value) throws IOException {
    generator.writeFieldName(name);
    if (value.isPresent()) {
      generator.writeString(value.get());
    } else {
      generator.writeNull();
    }
  }

  void number(String name, int value) throws IOException {
    generator.writeNumberField(name, value);
  }

  void flag(String name, boolean value) throws IOException {
    generator.writeBooleanField(name, value);
  }

  void texts(String name, Iterable<String> values) throws IOException {
    generator.writeArrayFieldStart(name);
    for (String value : values) {
      generator.writeString(value);
    }
    generator.writeEndArray();
  }

  <T> void objects(String name, List<T> items, Each<T> fields) throws IOException {
    generator.writeArrayFieldStart(name);
    for (T item : items) {
      braces(json -> fields.to(json, item));
    }
    generator.writeEndArray();
  }
}
