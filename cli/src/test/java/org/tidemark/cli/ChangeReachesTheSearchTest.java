package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One number in a copy of the invented hospital's policy is changed; every hit of every query then
 * shows the new number, and none the old one.
 */
class ChangeReachesTheSearchTest {
  private static final String OLD = "5.0";
  private static final String NEW = "4.5";
  private static final List<String> QUERIES =
      List.of(
          "which ph is ok",
          "ph cut off",
          "what is the ph limit for feeding",
          "reading above the limit",
          "ph 8 can i feed",
          "ph 5.5 on omeprazole",
          "second person to read the strip",
          "retest high ph",
          "no aspirate",
          "is it in the right place",
          "check position before feed",
          "acid reading but coughing");

  @TempDir Path folder;

  @Test
  void everyHitHasTheNewNumberAndNoneTheOld() throws IOException {
    List<String> before = shown(copy(OLD));
    List<String> after = shown(copy(NEW));
    List<Integer> had = holding(before, OLD);
    assertTrue(had.size() >= 5, "the old number stood in few texts: " + had.size());
    assertEquals(List.of(), holding(after, OLD));
    assertTrue(holding(after, NEW).size() >= had.size(), after::toString);
  }

  private static List<Integer> holding(List<String> texts, String number) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      if (texts.get(i).contains(number)) {
        places.add(i);
      }
    }
    return places;
  }

  private static List<String> shown(Path policy) {
    List<String> all = new ArrayList<>();
    for (String query : QUERIES) {
      Ran ran = Ran.with("find", query, "--policy", policy.toString(), "--limit", "60", "--json");
      assertEquals(0, ran.code(), ran::toString);
      JsonNode found = Repo.json(ran.out());
      all.add(found.path("at-this-number").asText());
      for (JsonNode hit : found.path("hits")) {
        all.add(hit.path("title").asText() + " " + hit.path("snippet").asText());
        all.add(hit.path("at-this-number").asText());
      }
    }
    return all;
  }

  private Path copy(String limit) throws IOException {
    Path shipped =
        Path.of(
            "../policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml");
    String text = Files.readString(shipped, StandardCharsets.UTF_8);
    String changed = text.replace("    is: " + OLD + "\n", "    is: " + limit + "\n");
    Path file = Files.createDirectories(folder.resolve("with-" + limit)).resolve("policy.yaml");
    return Files.writeString(file, changed, StandardCharsets.UTF_8);
  }
}
