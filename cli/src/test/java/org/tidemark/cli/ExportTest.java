package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb export. What the tables mean is tested with the policies, by an engine from outside. */
class ExportTest {
  @TempDir Path folder;

  @Test
  void theTablesGoToTheOutput() {
    Ran ran = Ran.with("export", "--dmn");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out().contains("A copy of the policy example-general-adult, edition 3."), ran.out());
    assertTrue(ran.out().contains("The tables are not the policy."), "it says what it is");
    assertTrue(ran.out().contains("<decision id=\"decision_Outcome_use\" name=\"Outcome_use\">"));
    assertTrue(ran.out().contains("<decision id=\"decision_Outcome_pass\" name=\"Outcome_pass\">"));
    assertEquals(
        ran.out(), Ran.with("export", "example-general-adult", "--dmn").out(), "always so");
  }

  @Test
  void oneQuestionGoesToAFileAndNothingIsWrittenOver() throws IOException {
    String file = folder.resolve("use.dmn").toString();
    String[] args = {"export", "--dmn", "--question", "use", "-o", file, "--json"};
    Ran ran = Ran.with(args);
    assertEquals(0, ran.code(), ran.err());
    JsonNode said = Repo.json(ran.out());
    assertEquals("use", said.path("questions").path(0).textValue());
    assertEquals(file, said.path("file").textValue());
    assertTrue(said.path("dmn").isNull(), "it stands in the file");
    String written = Files.readString(Path.of(file), UTF_8);
    assertTrue(written.contains("Code of these tables: " + said.path("code").textValue() + "."));
    assertFalse(written.contains("Outcome_pass"), "only what was asked for");
    Ran again = Ran.with(args);
    assertEquals(2, again.code());
    assertEquals(
        file
            + " is there already. Give --replace to write over it, or another --out.\n"
            + "Try: tidemark export --help\n",
        again.err());
  }

  @Test
  void aFormMustBeNamed() {
    assertEquals(
        new Ran(2, "", "Say in which form: --dmn or --schema.\nTry: tidemark export --help\n"),
        Ran.with("export"));
  }

  @Test
  void aFloorIsNotExported() {
    Ran ran = Ran.with("export", "floor-england-adult", "--dmn");
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains("[not-for-the-bedside]"), ran.err());
  }

  @Test
  void anUnknownQuestionGetsTheNearestOne() {
    Ran ran = Ran.with("export", "--dmn", "--question", "usw");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("did you mean `use`?"), ran.err());
  }

  @Test
  void aSchemaForEditors() throws IOException {
    Path file = folder.resolve("policy.schema.json");
    Ran ran = Ran.with("export", "--schema", "policy", "-o", file.toString());
    assertEquals(new Ran(0, "Wrote " + file + ".\n", ""), ran);
    JsonNode schema = Repo.json(Files.readString(file, UTF_8));
    assertEquals(
        "https://json-schema.org/draft/2020-12/schema", schema.path("$schema").textValue());
    JsonNode rule = schema.path("$defs").path("rule").path("properties");
    assertEquals(
        "Why, to the person at the bedside.", rule.path("because").path("description").textValue());
    assertTrue(schema.path("$defs").path("condition").path("properties").has("ph"));
  }

  @Test
  void aSchemaOfSomethingElseIsASlip() {
    for (String[] args :
        List.of(
            new String[] {"export", "--schema", "card"},
            new String[] {"export", "example-general-adult", "--schema", "policy"},
            new String[] {"export", "--schema", "policy", "--json"})) {
      assertEquals(
          new Ran(
              2,
              "",
              "--schema goes with -o alone, and is one of: policy, cases, findings, vocabulary,"
                  + " bibliography.\nTry: tidemark export --help\n"),
          Ran.with(args));
    }
    assertEquals(2, Ran.with("export", "--schema", "policy", "--dmn").code());
  }
}
