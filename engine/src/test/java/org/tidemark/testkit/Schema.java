package org.tidemark.testkit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.tidemark.load.Part;
import org.tidemark.model.Vocabulary;
import org.tidemark.report.LanguageSchema;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** A schema of the language, judged by a validator from outside. */
public final class Schema {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  /** Plain texts that YAML 1.2 reads as numbers (its core schema, YAML 1.2.2, section 10.3.2). */
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");

  private final JsonNode text;
  private final JsonSchema schema;

  private Schema(JsonNode text) {
    this.text = text;
    this.schema = FACTORY.getSchema(text);
  }

  public static Schema of(Part file, Vocabulary words) {
    return new Schema(json(LanguageSchema.of(file, words)));
  }

  /** The schema of a file of findings. */
  public static Schema ofFindings(Vocabulary words) {
    return new Schema(json(LanguageSchema.ofFindings(words)));
  }

  private static JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException notJson) {
      throw new IllegalArgumentException(text, notJson);
    }
  }

  public JsonNode text() {
    return text;
  }

  /** What the meta-schema of draft 2020-12 says of it. */
  public List<String> againstItsMetaSchema() {
    JsonSchema meta = FACTORY.getSchema(SchemaLocation.of(SpecVersion.VersionFlag.V202012.getId()));
    return messages(meta, text);
  }

  /** What it says of a tree, each text as a text, as the loader sees it. */
  public List<String> says(YamlNode tree) {
    return messages(schema, node(tree, false));
  }

  /** What it says of a tree as an editor sees it, where plain numbers are numbers. */
  public List<String> saysInAnEditor(YamlNode tree) {
    return messages(schema, node(tree, true));
  }

  private static List<String> messages(JsonSchema schema, JsonNode node) {
    return schema.validate(node).stream().map(Object::toString).sorted().toList();
  }

  private static JsonNode node(YamlNode tree, boolean typed) {
    if (tree instanceof YamlMap map) {
      ObjectNode object = MAPPER.createObjectNode();
      map.entries().forEach(e -> object.set(e.key().text(), node(e.value(), typed)));
      return object;
    }
    if (tree instanceof YamlList list) {
      ArrayNode array = MAPPER.createArrayNode();
      list.items().forEach(item -> array.add(node(item, typed)));
      return array;
    }
    return scalar((YamlText) tree, typed);
  }

  private static JsonNode scalar(YamlText text, boolean typed) {
    String value = text.text();
    boolean plain = typed && text.style() == YamlText.Style.PLAIN;
    if (plain && NUMBER.matcher(value).matches()) {
      return MAPPER.getNodeFactory().numberNode(new BigDecimal(value));
    }
    if (plain && (value.equals("true") || value.equals("false"))) {
      return MAPPER.getNodeFactory().booleanNode(value.equals("true"));
    }
    boolean nothing = plain && (value.isEmpty() || value.equals("~") || value.equals("null"));
    return nothing ? MAPPER.getNodeFactory().nullNode() : MAPPER.getNodeFactory().textNode(value);
  }
}
