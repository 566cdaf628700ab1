package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.load.Part;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.InputCase;
import org.tidemark.testkit.Schema;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * The schema and the loader on every input case: what the loader takes the schema takes, and what
 * it refuses the schema refuses, but for the codes and cases in {@code schema-does-not-see.txt}.
 */
final class SchemaAgreesTest {
  /** What a schema sees: the spelling and the shape of single fields. */
  private static final Set<String> SEEN =
      Set.of(
          "bad-date",
          "bad-name",
          "bad-time",
          "decimal-comma",
          "empty-value",
          "lapse-never",
          "missing-key",
          "unit-in-number",
          "unknown-key",
          "unknown-option",
          "unknown-word",
          "wrong-shape");

  private static final Map<String, Schema> SCHEMAS = schemas();

  private static Map<String, Schema> schemas() {
    Map<String, Schema> schemas = new LinkedHashMap<>();
    for (String policy : List.of("policy", "alone", "floor", "layer")) {
      schemas.put(policy, of(Language.policy()));
    }
    schemas.put("findings", Schema.ofFindings(Bench.VOCABULARY));
    schemas.put("vocabulary", of(OtherFiles.vocabulary()));
    schemas.put("bibliography", of(OtherFiles.bibliography()));
    return schemas;
  }

  private static Schema of(Part file) {
    return Schema.of(file, Bench.VOCABULARY);
  }

  @Test
  void everySchemaIsValidAgainstTheMetaSchema() {
    SCHEMAS.forEach((kind, s) -> assertEquals(List.of(), s.againstItsMetaSchema(), kind));
  }

  @Test
  void goodFilesAreTaken() {
    for (String file : List.of("policy", "alone", "floor", "layer", "vocabulary", "bibliography")) {
      YamlNode tree = tree(SourceText.of(file, Bench.resource("base/" + file + ".yaml")));
      Schema schema = Objects.requireNonNull(SCHEMAS.get(file));
      assertEquals(List.of(), schema.says(tree), file);
      assertEquals(List.of(), schema.saysInAnEditor(tree), file);
    }
  }

  private static YamlNode tree(SourceText text) {
    return seen(text).orElseThrow();
  }

  private static Optional<YamlNode> seen(SourceText text) {
    List<YamlNode> seen = new ArrayList<>();
    new YamlReader()
        .read(
            text,
            root -> {
              seen.add(root);
              return Loaded.good(root);
            });
    return seen.stream().findFirst();
  }

  @Test
  void everyInputCaseIsJudgedAlike() {
    Set<String> notSeen = new LinkedHashSet<>();
    Set<String> excused = new LinkedHashSet<>();
    for (String line : Bench.resource("schema-does-not-see.txt").lines().toList()) {
      if (line.startsWith("code ")) {
        notSeen.add(upTo(" ", line.substring(5)));
      } else if (line.startsWith("case ")) {
        excused.add(upTo(" : ", line.substring(5)));
      }
    }
    List<String> wrong = new ArrayList<>();
    Set<String> needed = new TreeSet<>();
    int refused = 0;
    for (InputCase c : CaseFiles.all()) {
      refused += judge(c, notSeen, excused, needed, wrong);
    }
    assertEquals(List.of(), wrong, "cases that are judged otherwise");
    Set<String> idle = new TreeSet<>(notSeen);
    idle.addAll(excused);
    idle.removeAll(needed);
    assertEquals(Set.of(), idle, "listed in schema-does-not-see.txt, and needed by no case");
    assertTrue(refused > 100, "only " + refused + " were refused by the schema");
  }

  private static String upTo(String end, String line) {
    int at = line.indexOf(end);
    return at < 0 ? line : line.substring(0, at);
  }

  private static int judge(
      InputCase c,
      Set<String> notSeen,
      Set<String> excused,
      Set<String> needed,
      List<String> wrong) {
    Schema schema = SCHEMAS.get(c.setting("as", c.parts().containsKey("text") ? "yaml" : "policy"));
    boolean whole = c.setting("file", "").isEmpty() && c.setting("encoding", "").isEmpty();
    if (schema == null || !whole) {
      return 0;
    }
    Optional<YamlNode> tree = seen(SourceText.of("case.yaml", Bench.text(c)));
    Set<String> errors = new TreeSet<>();
    for (Diagnostic d : Bench.read(c).diagnostics()) {
      if (d.severity() == Severity.ERROR) {
        errors.add(d.code().id());
      }
    }
    List<String> says = tree.map(schema::says).orElse(List.of());
    Set<String> unseen = new TreeSet<>(errors);
    unseen.removeAll(notSeen);
    unseen.retainAll(SEEN);
    if (errors.isEmpty() && !says.isEmpty()) {
      wrong.add(c.name() + ": the loader takes it, and the schema says " + says);
    } else if (says.isEmpty() && !unseen.isEmpty() && excused.contains(c.name())) {
      needed.add(c.name());
    } else if (says.isEmpty() && !unseen.isEmpty()) {
      wrong.add(c.name() + ": the loader says " + errors + ", and the schema nothing");
    } else if (says.isEmpty()) {
      needed.addAll(errors);
    }
    return says.isEmpty() ? 0 : 1;
  }
}
