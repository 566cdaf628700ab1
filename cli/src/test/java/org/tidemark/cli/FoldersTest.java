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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hospital's own folders: names, places, and what is wrong in them. */
class FoldersTest {
  private static final String DEMO = "example-general-adult";
  private static final String FLOOR = "floor-england-adult";

  @TempDir private Path folder = Path.of("target");

  private static String shipped(String name) throws IOException {
    String path = "policies/src/main/resources/org/tidemark/policies/" + name + "/policy.yaml";
    return Files.readString(Path.of(Repo.file(path)), UTF_8);
  }

  private Path put(String place, String text) throws IOException {
    Path file = folder.resolve(place).resolve("policy.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, UTF_8);
    return file;
  }

  private static String ward() throws IOException {
    return shipped(DEMO).replace("policy: " + DEMO + "\n", "policy: ward-adult\n");
  }

  private static Ran check(String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("check", "--findings", Repo.example("clear-check"), "--today", "2026-11-25"));
    args.addAll(List.of(more));
    return Ran.with(args.toArray(String[]::new));
  }

  private static void clash(Ran ran, String name, String... places) {
    assertEquals(3, ran.code(), ran::err);
    assertTrue(ran.err().contains("error: `" + name + "` is also the name of "), ran::err);
    assertTrue(ran.err().contains("[duplicate-name]"), ran::err);
    for (String place : places) {
      assertTrue(ran.err().contains(place), () -> place + " is not named in\n" + ran.err());
    }
  }

  @Test
  void aFolderThatIsNotThere() {
    String none = folder.resolve("none").toString();
    for (String verb : List.of("policies", "prove")) {
      assertEquals(
          new Ran(
              2,
              "",
              "The folder " + none + " does not exist.\nTry: tidemark " + verb + " --help\n"),
          Ran.with(verb, "--folder", none));
    }
    assertEquals(2, check("--folder", none).code());
  }

  @Test
  void aFolderThatIsAFile() throws IOException {
    String file = put("ward-adult", ward()).toString();
    Ran ran = Ran.with("policies", "--folder", file);
    assertEquals(2, ran.code());
    assertTrue(ran.err().startsWith("The folder " + file + " is no folder that"), ran::err);
  }

  @Test
  void aPolicyInAFolderBuildsOnTheShippedFloor() throws IOException {
    put("ward-adult", ward());
    Ran ran = check("--folder", folder.toString(), "--policy", "ward-adult", "--json");
    assertEquals(0, ran.code(), ran::err);
    assertEquals("ward-adult", Repo.json(ran.out()).path("policy").path("name").asText());
  }

  @Test
  void aFolderNeverTakesThePlaceOfAShippedPolicy() throws IOException {
    put(DEMO, shipped(DEMO).replace("edition: 3", "edition: 4"));
    Ran named = check("--folder", folder.toString(), "--policy", DEMO);
    clash(named, DEMO, folder + "/" + DEMO + "/policy.yaml", "policies/" + DEMO + "/policy.yaml:");
    assertEquals("", named.out());
    clash(check("--folder", folder.toString()), DEMO);
  }

  @Test
  void aFloorBesideAPolicyNeverTakesThePlaceOfTheShippedOne() throws IOException {
    Path ward = put("ward-adult", ward());
    put(FLOOR, shipped(FLOOR).replace("\nedition: 1\n", "\nedition: 2\n"));
    Ran byPath = check("--policy", ward.toString());
    clash(byPath, FLOOR, folder + "/" + FLOOR + "/policy.yaml", "policies/" + FLOOR);
    assertEquals("", byPath.out());
    clash(check("--folder", folder.toString(), "--policy", "ward-adult"), FLOOR);
  }

  @Test
  void aCopyToTheLetterIsTheSamePolicy() throws IOException {
    Path ward = put("ward-adult", ward());
    put(FLOOR, shipped(FLOOR));
    Ran ran = check("--policy", ward.toString(), "--json");
    assertEquals(0, ran.code(), ran::err);
    assertEquals("proceed", Repo.json(ran.out()).path("outcome").asText());
  }

  @Test
  void twoFoldersWithOneName() throws IOException {
    put("east/ward-adult", ward());
    put("west/ward-adult", ward().replace("edition: 3", "edition: 4"));
    String east = folder.resolve("east").toString();
    String west = folder.resolve("west").toString();
    Ran ran = check("--folder", east, "--folder", west, "--policy", "ward-adult");
    clash(ran, "ward-adult", east + "/ward-adult/policy.yaml", west + "/ward-adult/policy.yaml");
  }

  @Test
  void aFolderAndThePolicyInItHaveOneName() throws IOException {
    put("ward-adult", ward().replace("policy: ward-adult", "policy: " + FLOOR));
    Ran ran = check("--folder", folder.toString(), "--policy", "ward-adult");
    assertEquals(3, ran.code());
    assertTrue(
        ran.err()
            .contains(
                "the folder is called `ward-adult`, and the policy in it `"
                    + FLOOR
                    + "` [folder-name]"),
        ran::err);
  }

  @Test
  void aPolicyThatTakesTheNameOfTheFloorItBuildsOn() throws IOException {
    Path file = put("any", ward().replace("policy: ward-adult", "policy: " + FLOOR));
    Ran ran = check("--policy", file.toString());
    assertEquals(3, ran.code(), ran::out);
    assertTrue(ran.err().contains("`" + FLOOR + "` builds on itself in the end"), ran::err);
  }

  @Test
  void theListHasTheSoundOnesAndTheProblemsOfTheBroken() throws IOException {
    put("ward-adult", ward());
    put("night-adult", "policy: night-adult\nkind: hopsital\n");
    Ran text = Ran.with("policies", "--folder", folder.toString());
    assertEquals(3, text.code());
    assertTrue(text.out().startsWith("ward-adult\n"), text::out);
    assertTrue(text.out().contains("\n" + FLOOR + "\n"), text::out);
    assertTrue(!text.out().contains("night-adult"), text::out);
    assertTrue(text.err().contains("night-adult/policy.yaml:2:7: error: "), text::err);
    Ran asJson = Ran.with("policies", "--folder", folder.toString(), "--json");
    assertEquals(3, asJson.code());
    assertEquals("", asJson.err());
    JsonNode json = Repo.json(asJson.out());
    assertEquals("ward-adult", json.path("policies").path(0).path("name").asText());
    List<String> codes = json.path("problems").findValuesAsText("code");
    assertTrue(codes.contains("unknown-word") && codes.contains("missing-key"), codes::toString);
  }
}
