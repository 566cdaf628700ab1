package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Remarks on sound files are shown; all problems of a broken one come in one run. */
class RemarksTest {
  private static final String DEMO =
      Repo.file(
          "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml");

  @TempDir private Path folder = Path.of("target");

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text, UTF_8);
    return file.toString();
  }

  private static Set<String> codes(JsonNode said) {
    Set<String> codes = new TreeSet<>();
    said.forEach(d -> codes.add(d.path("code").asText()));
    return codes;
  }

  @Test
  void ofFindings() throws IOException {
    String file = write("findings.yaml", "place: ward #2\nph: 5\n");
    Ran text = Ran.with("check", "--findings", file);
    assertEquals(0, text.code(), text::err);
    assertTrue(text.err().contains("findings.yaml:1:13: warning: "), text::err);
    Ran json = Ran.with("check", "--findings", file, "--json");
    assertEquals("", json.err());
    JsonNode remark = Repo.json(json.out()).path("remarks").path(0);
    assertEquals("lost-after-hash", remark.path("code").asText(), json::out);
    assertEquals("warning", remark.path("severity").asText());
  }

  @Test
  void ofAPolicy() throws IOException {
    String text = Files.readString(Path.of(DEMO), UTF_8);
    String policy = write("policy.yaml", text.replaceFirst("edition: 3\n", "edition: 3 #old\n"));
    Ran ran =
        Ran.with("check", "--policy", policy, "--findings", Repo.example("clear-check"), "--json");
    assertEquals(0, ran.code(), ran::out);
    assertEquals(Set.of("lost-after-hash"), codes(Repo.json(ran.out()).path("remarks")), ran::out);
  }

  @Test
  void allProblemsOfFindingsAtOnce() throws IOException {
    String file = write("findings.yaml", "place:\tward\nph: 5,5\nweather: fine\n");
    Ran ran = Ran.with("check", "--findings", file, "--json");
    assertEquals(4, ran.code());
    assertEquals(
        Set.of("tab", "decimal-comma", "unknown-finding"),
        codes(Repo.json(ran.out()).path("problems")),
        ran::out);
  }

  @Test
  void allProblemsOfAPolicyAtOnce() throws IOException {
    String text =
        Files.readString(Path.of(DEMO), UTF_8)
            .replaceFirst("edition: 3\n", "edition:\t3\n")
            .replaceFirst("(?m)^kind: hospital\n", "kind: hospital\nweather: fine\n")
            .replaceFirst("is: 5[.]0\n", "is: 5,0\n");
    String policy = write("policy.yaml", text);
    Ran ran =
        Ran.with("check", "--policy", policy, "--findings", Repo.example("clear-check"), "--json");
    assertEquals(3, ran.code());
    assertEquals(
        Set.of("tab", "decimal-comma", "unknown-key"),
        codes(Repo.json(ran.out()).path("problems")),
        ran::out);
  }
}
