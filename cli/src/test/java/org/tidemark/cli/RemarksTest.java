package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** The invented hospital's policy under a name of its own. */
  private static String ward() throws IOException {
    return Files.readString(Path.of(DEMO), UTF_8)
        .replaceFirst("policy: example-general-adult\n", "policy: ward-adult\n");
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
    String policy = write("policy.yaml", ward().replaceFirst("edition: 3\n", "edition: 3 #old\n"));
    Ran ran =
        Ran.with("check", "--policy", policy, "--findings", Repo.example("clear-check"), "--json");
    assertEquals(0, ran.code(), ran::out);
    assertEquals(Set.of("lost-after-hash"), codes(Repo.json(ran.out()).path("remarks")), ran::out);
  }

  /**
   * Whatever is asked of a policy, its remarks are said: for people beside, for programs inside.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "find no aspirate",
        "find --suggest no asp",
        "read no-aspirate",
        "prove",
        "card --list",
        "card before-first-use --replace --out"
      })
  void ofAPolicyByEveryVerb(String typed) throws IOException {
    String policy = write("policy.yaml", ward().replaceFirst("edition: 3\n", "edition: 3 #old\n"));
    List<String> args = new ArrayList<>(List.of(typed.split(" ")));
    if (typed.endsWith("--out")) {
      args.add(folder.resolve("card.html").toString());
    }
    args.addAll(List.of("--policy", policy));
    Ran text = Ran.with(args.toArray(String[]::new));
    assertTrue(text.err().contains("[lost-after-hash]"), text::err);
    args.add("--json");
    Ran json = Ran.with(args.toArray(String[]::new));
    assertEquals("", json.err());
    assertEquals(
        Set.of("lost-after-hash"), codes(Repo.json(json.out()).path("remarks")), json::out);
  }

  @Test
  void ofTwoEditionsOnce() throws IOException {
    String was = write("was.yaml", ward().replaceFirst("edition: 3\n", "edition: 3 #old\n"));
    String is = write("is.yaml", ward().replaceFirst("edition: 3\n", "edition: 4 #new\n"));
    Ran ran = Ran.with("compare", was, is, "--json");
    assertEquals("", ran.err());
    JsonNode remarks = Repo.json(ran.out()).path("remarks");
    assertEquals(List.of(was, is), remarks.findValuesAsText("file"), ran::out);
    assertEquals(
        1, Repo.json(Ran.with("compare", was, was, "--json").out()).path("remarks").size());
  }

  @Test
  void ofAPathThatLeadsToANamesakeOfAShippedPolicy() throws IOException {
    String text = Files.readString(Path.of(DEMO), UTF_8);
    String policy = write("policy.yaml", text.replaceFirst("edition: 3\n", "edition: 4\n"));
    Ran ran = Ran.with("find", "no aspirate", "--policy", policy);
    assertEquals(0, ran.code(), ran::err);
    assertTrue(
        ran.err()
            .startsWith(
                policy
                    + ":2:9: warning: this file bears the name of a policy that is shipped, and"
                    + " differs from it [duplicate-name]"),
        ran::err);
    assertEquals("", Ran.with("find", "no aspirate", "--policy", DEMO).err());
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
        ward()
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
