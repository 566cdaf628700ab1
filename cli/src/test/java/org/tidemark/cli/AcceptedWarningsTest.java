package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Warnings that a policy lets stand are told apart from open ones, by all who look at a policy. */
class AcceptedWarningsTest {
  private static final String DEMO =
      "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml";
  private static final String TOLD = "lost-after-hash: everything from this hash on is a remark";
  private static final String WHY =
      "Accepted by Nutrition steering group: The number was left out knowingly.";

  @TempDir private Path folder = Path.of("target");
  private Path file = folder;

  @BeforeEach
  void twoWarningsOneOfThemAccepted() throws IOException {
    String text =
        Files.readString(Path.of(Repo.file(DEMO)), UTF_8)
            .replaceFirst("policy: example-general-adult\n", "policy: ward-adult\n")
            .replaceFirst("edition: 3\n", "edition: 3 #open\n")
            .replaceFirst("owner: [^\n]*\n", "owner: Other Hospital #accepted\n")
            .concat(
                """

                accepted-warnings:
                  - warning: lost-after-hash
                    where: "#accepted"
                    why: The number was left out knowingly.
                    by: Nutrition steering group
                """);
    file = Files.createDirectories(folder.resolve("ward-adult")).resolve("policy.yaml");
    Files.writeString(file, text, UTF_8);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void policiesSaysTheOpenOneBesideTheListAndTheAcceptedOneBelowIt() {
    Ran ran = Ran.with("policies", "--today", "2026-11-25", "--folder", folder.toString());
    assertEquals(0, ran.code(), ran::err);
    assertTrue(ran.err().contains("`#open` [lost-after-hash]"), ran::err);
    assertFalse(ran.err().contains("#accepted"), ran::err);
    String below = ran.out().substring(ran.out().indexOf("\nAccepted warnings\n"));
    assertTrue(oneLine(below).contains(TOLD), below);
    assertTrue(oneLine(below).contains(WHY), below);
    assertFalse(below.contains("#open"), below);
  }

  @Test
  void asJsonEachRemarkSaysByWhomItWasAccepted() throws IOException {
    Ran ran = Ran.with("policies", "--folder", folder.toString(), "--json");
    JsonNode remarks = Repo.json(ran.out()).path("remarks");
    assertEquals(3, remarks.size(), "the third is one that the floor accepts: " + ran.out());
    assertEquals("accepted", remarks.path(0).path("severity").asText());
    assertEquals("#accepted", remarks.path(0).path("text").asText());
    assertEquals("Nutrition steering group", remarks.path(0).path("accepted-by").asText());
    assertEquals(
        "The number was left out knowingly.", remarks.path(0).path("accepted-why").asText());
    assertEquals("warning", remarks.path(1).path("severity").asText());
    assertTrue(remarks.path(1).path("accepted-by").isNull());
  }

  @Test
  void proveDoesTheSame() {
    Ran ran = Ran.with("prove", "--policy", file.toString());
    assertEquals(0, ran.code(), ran::err);
    assertTrue(ran.err().contains("`#open` [lost-after-hash]"), ran::err);
    assertFalse(ran.err().contains("#accepted"), ran::err);
    String below = ran.out().substring(ran.out().indexOf("\nAccepted warnings\n"));
    assertTrue(oneLine(below).contains(WHY), below);
  }

  @Test
  void theSheetForThoseWhoApproveHasAPartForEach() throws IOException {
    Path sheet = folder.resolve("sheet.html");
    Ran ran =
        Ran.with(
            "sign-off",
            "--today",
            "2026-11-25",
            "--policy",
            file.toString(),
            "--out",
            sheet.toString());
    assertEquals(0, ran.code(), ran::err);
    String html = Files.readString(sheet, UTF_8).replace("&nbsp;", " ").replace("&#96;", "`");
    String open =
        html.substring(
            html.indexOf("<h2>Warnings that are open</h2>"),
            html.indexOf("<h2>Warnings that were accepted, and why</h2>"));
    String accepted = html.substring(html.indexOf("<h2>Warnings that were accepted, and why</h2>"));
    assertTrue(open.contains("<li>" + TOLD + " and is not read: `#open`</li>"), open);
    assertFalse(open.contains("#accepted"), open);
    assertTrue(
        accepted.contains("<li>" + TOLD + " and is not read: `#accepted`. " + WHY + "</li>"),
        accepted);
  }

  @Test
  void theBedsideIsToldOfOpenOnesOnly() {
    Ran ran =
        Ran.with("check", "--policy", file.toString(), "--findings", Repo.example("clear-check"));
    assertEquals(0, ran.code(), ran::err);
    assertTrue(ran.err().contains("#open"), ran::err);
    assertFalse(ran.err().contains("#accepted"), ran::err);
    assertFalse(ran.out().contains("Accepted warnings"), ran::out);
  }

  @Test
  void anAcceptanceThatFitsNothingBreaksThePolicy() throws IOException {
    String text = Files.readString(file, UTF_8).replaceFirst(" #accepted\n", "\n");
    Files.writeString(file, text, UTF_8);
    Ran ran =
        Ran.with("check", "--policy", file.toString(), "--findings", Repo.example("clear-check"));
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("[accepts-nothing]"), ran::err);
  }
}
