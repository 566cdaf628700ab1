package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The verb new. */
class NewTest {
  private static final List<String> MISSING =
      List.of(
          "title",
          "owner",
          "approved",
          "review-by",
          "for",
          "values",
          "bands",
          "barred",
          "rules",
          "rules",
          "lapses",
          "fallback",
          "retest",
          "contacts",
          "trays",
          "records");

  @TempDir Path folder;

  private Path made(String... more) {
    Path made = folder.resolve("ward-adult");
    List<String> args = new ArrayList<>(List.of("new", made.toString()));
    args.addAll(List.of(more));
    Ran ran = Ran.with(args.toArray(String[]::new));
    assertEquals(0, ran.code(), ran.err());
    return made;
  }

  @Test
  void itHoldsNoNumberAtAll() throws IOException {
    Path made = made();
    for (String file : List.of("policy.yaml", "cases.yaml", "README.md")) {
      String text = Files.readString(made.resolve(file), UTF_8);
      String rest =
          text.replace("\nedition: 1\n", "\n")
              .replace("{vocabulary: nasogastric-tube, edition: 1}", "");
      assertTrue(rest.chars().noneMatch(Character::isDigit), file);
      assertFalse(text.contains("NAME") || text.contains("BUILDS-ON"), file);
    }
  }

  /** Editors are pointed at the schema that lies beside, and that is what export writes. */
  @ParameterizedTest
  @ValueSource(strings = {"policy", "cases"})
  void editorsFindTheSchema(String kind) throws IOException {
    Path made = made();
    String first = Files.readAllLines(made.resolve(kind + ".yaml"), UTF_8).get(0);
    assertEquals("# yaml-language-server: $schema=" + kind + ".schema.json", first);
    assertEquals(
        Ran.with("export", "--schema", kind).out(),
        Files.readString(made.resolve(kind + ".schema.json"), UTF_8));
  }

  /** It loads, and every remark on it is one thing that is missing, with its code and its place. */
  @ParameterizedTest
  @ValueSource(strings = {"nothing", "floor-england-adult"})
  void whatIsMissingIsListed(String on) {
    Path made = folder.resolve("ward-adult");
    Ran ran = Ran.with("new", made.toString(), "--on", on, "--json");
    assertEquals(0, ran.code(), ran.err());
    List<String> missing = new ArrayList<>();
    int line = 0;
    for (JsonNode each : Repo.json(ran.out()).path("missing")) {
      if (each.path("code").asText().equals("not-stated")) {
        assertTrue(each.path("line").asInt() > line, each::toString);
        line = each.path("line").asInt();
        assertTrue(each.path("file").asText().endsWith("policy.yaml"), each::toString);
        missing.add(each.path("message").asText().replaceAll("^`|`.*", ""));
      }
    }
    assertEquals(MISSING, missing);
  }

  /** Nothing that the file leaves open is left out of the list, and nothing else is in it. */
  @Test
  void everyOpenLineIsListed() throws IOException {
    Path made = made();
    List<String> lines = Files.readAllLines(made.resolve("policy.yaml"), UTF_8);
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).endsWith(": not-stated")) {
        open.add(i + 1);
      }
    }
    List<Integer> listed = new ArrayList<>();
    Ran ran = Ran.with("prove", "--policy", made.toString(), "--json");
    for (JsonNode each : Repo.json(ran.out()).path("remarks")) {
      if (each.path("code").asText().equals("not-stated")) {
        listed.add(each.path("line").asInt());
      }
    }
    assertEquals(MISSING.size(), open.size());
    assertEquals(open, listed);
  }

  @Test
  void checkAnswersNothingAndListsWhatIsMissing() {
    Path made = made();
    String findings = Repo.example("clear-check");
    Ran ran = Ran.with("check", "--policy", made.toString(), "--findings", findings, "--json");
    assertEquals(0, ran.code(), ran.out());
    JsonNode answer = Repo.json(ran.out());
    assertEquals("hold", answer.path("outcome").asText());
    assertEquals("not-spoken-of:scope", answer.path("reasons").path(0).path("rule").asText());
    assertEquals("not-stated", answer.path("remarks").path(0).path("code").asText());
    Ran prove = Ran.with("prove", "--policy", made.toString());
    assertEquals(1, prove.code(), prove.err());
    assertTrue(prove.err().contains("[not-stated]"), prove.err());
    Ran trial = Ran.with("trial", made.toString());
    assertEquals(3, trial.code());
    assertTrue(trial.err().contains("[no-cases]"), trial.err());
  }

  @Test
  void nothingIsWrittenOver() throws IOException {
    Path made = made();
    Files.writeString(made.resolve("policy.yaml"), "mine", UTF_8);
    Ran again = Ran.with("new", made.toString());
    assertEquals(2, again.code());
    assertTrue(again.err().contains("[would-overwrite]"), again.err());
    assertEquals("mine", Files.readString(made.resolve("policy.yaml"), UTF_8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Ward Adult", "nowhere/ward-adult"})
  void aNameThatCannotBeOneAndAMissingParent(String name) {
    Ran ran = Ran.with("new", folder.resolve(name).toString());
    assertEquals(2, ran.code(), ran.out());
    assertFalse(Files.exists(folder.resolve(name)));
  }

  @Test
  void anUnknownFloorIsASlipAndNothingIsWritten() {
    Path made = folder.resolve("ward-adult");
    assertEquals(2, Ran.with("new", made.toString(), "--on", "floor-nowhere").code());
    assertFalse(Files.exists(made));
  }

  @Test
  void helpHasExamples() {
    Ran ran = Ran.with("new", "--help");
    assertTrue(
        ran.out().contains("tidemark new our-policies/ward-adult --on floor-england-adult"),
        ran.out());
  }
}
