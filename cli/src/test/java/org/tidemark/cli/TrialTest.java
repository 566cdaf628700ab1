package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb trial. */
class TrialTest {
  private static final Path HOSPITAL =
      Path.of(Repo.file("policies/src/main/resources/org/tidemark/policies/example-general-adult"));

  @TempDir Path folder;

  /** The hospital's folder with something else written into one of its files. */
  private String copy(String file, String from, String to) throws IOException {
    for (String name : new String[] {"policy.yaml", "cases.yaml"}) {
      String text = Files.readString(HOSPITAL.resolve(name), UTF_8);
      if (name.equals(file)) {
        assertTrue(text.contains(from), from);
        text = text.replace(from, to);
      }
      Files.writeString(folder.resolve(name), text, UTF_8);
    }
    return folder.toString();
  }

  @Test
  void theDemoPolicyPassesAndIsCovered() {
    Ran ran = Ran.with("trial", "--all-covered");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Nasogastric tubes in adults, edition 3\n"), ran.out());
    JsonNode json = Repo.json(Ran.with("trial", "example-general-adult", "--json").out());
    assertEquals(json.path("cases").path("all"), json.path("cases").path("passed"));
    assertEquals(json.path("rules").path("all"), json.path("rules").path("covered"));
    assertEquals(json.path("readings").path("all"), json.path("readings").path("covered"));
    assertTrue(json.path("all-pass").asBoolean() && json.path("all-covered").asBoolean());
    assertEquals(json.path("cases").path("all").asInt(), json.path("results").size());
    assertEquals(0, json.path("uncovered-rules").size());
  }

  @Test
  void aFailureEndsWithOneAndSaysWhy() throws IOException {
    String policy = copy("policy.yaml", "    is: 5.0", "    is: 4.5");
    Ran ran = Ran.with("trial", policy);
    assertEquals(1, ran.code(), ran.err());
    assertTrue(ran.out().contains("!! NOT SO: "), ran.out());
    assertTrue(ran.out().contains("expected proceed, and the answer is hold"), ran.out());
    JsonNode json = Repo.json(Ran.with("trial", policy, "--json").out());
    assertEquals(false, json.path("all-pass").asBoolean());
    assertTrue(json.path("cases").path("passed").asInt() < json.path("cases").path("all").asInt());
  }

  /** What no case reaches is said; it counts as a failure only when that is asked for. */
  @Test
  void whatIsNotCoveredEndsWithOneOnlyWhenAsked() throws IOException {
    String policy = copy("cases.yaml", "      attempts: 4", "      attempts: 5");
    Ran ran = Ran.with("trial", policy);
    assertEquals(0, ran.code(), ran.out());
    assertTrue(ran.out().contains("  - pass: attempts 4, for rule `tries-used-up`,"), ran.out());
    assertEquals(1, Ran.with("trial", policy, "--all-covered").code());
    JsonNode missing =
        Repo.json(Ran.with("trial", policy, "--json").out()).path("uncovered-readings").path(0);
    assertEquals("attempts", missing.path("finding").asText());
    assertEquals("4", missing.path("reading").asText());
    assertEquals("rule `tries-used-up`", missing.path("limits").path(0).asText());
    assertTrue(missing.path("file").asText().endsWith("policy.yaml"), missing::toString);
    assertTrue(missing.path("line").asInt() > 1, missing::toString);
  }

  @Test
  void brokenCasesAndMissingCasesAreAsBadAsABrokenPolicy() throws IOException {
    String policy = copy("cases.yaml", "expect: escalate", "expect: eskalate");
    Ran ran = Ran.with("trial", policy);
    assertEquals(3, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains("[unknown-word]"), ran.err());
    Files.delete(folder.resolve("cases.yaml"));
    Ran none = Ran.with("trial", policy, "--json");
    assertEquals(3, none.code());
    assertEquals(
        "missing-file", Repo.json(none.out()).path("problems").path(0).path("code").asText());
    Files.delete(folder.resolve("policy.yaml"));
    assertEquals(3, Ran.with("trial", policy).code());
  }

  @Test
  void otherCasesMayBeTried() {
    String cases = HOSPITAL.resolve("cases.yaml").toString();
    assertEquals(0, Ran.with("trial", "example-general-adult", "--cases", cases).code());
    Ran floor = Ran.with("trial", "floor-england-adult", "--cases", cases);
    assertEquals(3, floor.code());
    assertTrue(floor.err().contains("[other-policy]"), floor.err());
  }

  @Test
  void anUnknownPolicyOrCaseIsASlipInTheCommandLine() {
    assertEquals(2, Ran.with("trial", "example-general-adlut").code());
    Ran ran = Ran.with("trial", "--explain", "NG-0031");
    assertEquals(
        new Ran(
            2,
            "",
            "No case is called `NG-0031`. Did you mean: NG-031\nTry: tidemark trial --help\n"),
        ran);
  }

  @Test
  void oneCaseIsExplainedStepByStep() {
    Ran ran = Ran.with("trial", "--explain", "B-in-the-airway-before");
    assertEquals(0, ran.code(), ran.err());
    for (String heading :
        new String[] {
          "1 What was entered",
          "2 What of it does not count",
          "3 Which rules fire",
          "4 Which of them lose their force, and to what",
          "5 What is still open",
          "6 The answer",
          "7 What the case expects"
        }) {
      assertTrue(ran.out().contains("\n" + heading + "\n"), heading);
    }
    assertTrue(
        ran.out()
            .contains(
                "  - `acid-aspirate` does not count here: `in-the-airway-before` takes its force.\n"),
        ran.out());
    JsonNode json =
        Repo.json(Ran.with("trial", "--explain", "B-in-the-airway-before", "--json").out());
    assertEquals("hold", json.path("outcome").asText());
    assertEquals(7, json.path("steps").size());
    assertEquals("set-aside", json.path("steps").path(3).path("step").asText());
  }

  @Test
  void anExplainedFailureEndsWithOne() throws IOException {
    String policy =
        copy(
            "cases.yaml",
            "    why: \"Over the limit.\"",
            "    needs: [doer]\n    why: \"Over the limit.\"");
    Ran ran = Ran.with("trial", policy, "--explain", "B-pass-after-four-tries");
    assertEquals(1, ran.code(), ran.out());
    assertTrue(ran.out().contains("  - Not so: `doer` is not asked; these are: []."), ran.out());
  }

  @Test
  void helpHasExamples() {
    Ran ran = Ran.with("trial", "--help");
    assertEquals(0, ran.code());
    assertTrue(
        ran.out().contains("tidemark trial our-policies/ward-adult --all-covered"), ran.out());
  }
}
