package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the program says to broken files; each has one code of its own and no answer. */
class BadInputTest {
  @TempDir private Path folder = Path.of("target");

  private Ran check(String findings, String... more) throws IOException {
    Path file = folder.resolve("findings.yaml");
    Files.writeString(file, findings, ISO_8859_1);
    String[] args = new String[more.length + 3];
    args[0] = "check";
    args[1] = "--findings";
    args[2] = file.toString();
    System.arraycopy(more, 0, args, 3, more.length);
    return Ran.with(args);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'ph: 5,5'                         | decimal-comma",
        "'ph: 5.5 pH'                      | unit-in-number",
        "'ph: 5.3'                         | off-step",
        "'ph: 15'                          | out-of-range",
        "'pH-value: 5'                     | unknown-finding",
        "'aspirate: obtaned'               | unknown-option",
        "'ph: 5\nph: 6'                    | duplicate-key",
        "'aspirate: none\nph: 5'           | contradiction",
        "'place: &a ward'                  | anchor-or-alias",
        "'place: caf\u00E9'                | not-utf8",
        "'ph:'                             | empty-value",
        "'findings: {ph: 5}\nquestoin: use'| unknown-key"
      })
  void brokenFindings(String findings, String code) throws IOException {
    Ran ran = check(findings.strip(), "--json");
    assertEquals(4, ran.code(), ran::out);
    JsonNode problem = Repo.json(ran.out()).path("problems").path(0);
    assertEquals(code, problem.path("code").asText(), ran::out);
    assertEquals("error", problem.path("severity").asText());
    assertTrue(problem.path("help").isTextual(), ran::out);
    assertTrue(problem.path("line").asInt() >= 1, ran::out);
  }

  @Test
  void allProblemsComeAtOnceEachWithItsCaret() throws IOException {
    Ran ran = check("ph: 5,5\nplace: wrad\n");
    assertEquals(4, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains(":1:5: error: "), ran::err);
    assertTrue(ran.err().contains("  1 | ph: 5,5\n    |     ^^^\n"), ran::err);
    assertTrue(ran.err().contains(":2:8: error: "), ran::err);
    assertTrue(ran.err().contains("did you mean `ward`?"), ran::err);
  }

  @Test
  void aMissingFile() {
    Ran ran = Ran.with("check", "--findings", folder.resolve("none.yaml").toString());
    assertEquals(4, ran.code());
    assertTrue(ran.err().contains("[missing-file]"), ran::err);
  }

  @Test
  void aBrokenPolicyGivesNoAnswer() throws IOException {
    Path policy = folder.resolve("policy.yaml");
    Files.writeString(policy, "policy: ours\nkind: hopsital\nbuilds-on: nowhere\n", UTF_8);
    Ran ran = check("ph: 5\n", "--policy", folder.toString());
    assertEquals(3, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains("[missing-floor]"), ran::err);
    assertTrue(
        ran.err().contains("policy.yaml:3:12: error: no policy is called `nowhere`"), ran::err);
  }

  @Test
  void aPolicyByPathIsHeldAgainstTheBibliography() throws IOException {
    Path shipped =
        Path.of(
            Repo.file(
                "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml"));
    String text = Files.readString(shipped, UTF_8);
    Path policy = folder.resolve("policy.yaml");
    Files.writeString(policy, text.replaceFirst("\\[PH-36, PH-37\\]", "[XX-99]"), UTF_8);
    Ran ran = check("ph: 5\n", "--policy", policy.toString());
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("the bibliography has no `XX-99` [unknown-citation]"), ran::err);
    Files.writeString(policy, text, UTF_8);
    Ran sound = check("ph: 5\n", "--policy", policy.toString(), "--json");
    assertEquals(0, sound.code(), sound::err);
    assertEquals("hold", Repo.json(sound.out()).path("outcome").asText());
  }

  @Test
  void findingsMayBeJson() throws IOException {
    Ran ran =
        check(
            "{\"question\": \"use\", \"findings\": {\"population\": \"adult\", \"ph\": 5.5}}",
            "--json");
    assertEquals(0, ran.code(), ran::out);
    assertEquals("hold", Repo.json(ran.out()).path("outcome").asText());
  }
}
