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

/** The verb policies with show: a policy as it holds, with every layer's say. */
class PoliciesShowTest {
  @TempDir private Path folder = Path.of("target");

  /** A layer on another: one number of its own, and nothing else. */
  private void unit(String name, String below, String value) throws IOException {
    Files.createDirectories(folder.resolve(name));
    Files.writeString(
        folder.resolve(name).resolve("policy.yaml"),
        String.join(
            "\n",
            "policy: " + name,
            "kind: unit",
            "title: Nasogastric tubes on " + name,
            "owner: Example General Hospital",
            "edition: 1",
            "status: draft",
            "approved: not-stated",
            "review-by: 2028-01-01",
            "words-from: {vocabulary: nasogastric-tube, edition: 1}",
            "for: {population: adult, place: ward}",
            "builds-on: " + below,
            "clock: Europe/London",
            "values:",
            "  " + value,
            "questions: {}",
            ""),
        UTF_8);
  }

  private Ran show(String policy, String... more) {
    List<String> args = new ArrayList<>(List.of("policies", "show", policy, "--folder"));
    args.add(folder.toString());
    args.addAll(List.of(more));
    return Ran.with(args.toArray(new String[0]));
  }

  private static List<String> says(JsonNode shown, String kind, String name) {
    List<String> says = new ArrayList<>();
    for (JsonNode item : shown.path("items")) {
      if (item.path("kind").textValue().equals(kind)
          && item.path("name").textValue().equals(name)) {
        item.path("says")
            .forEach(
                s -> says.add(s.path("layer").textValue() + ": " + s.path("text").textValue()));
        says.add(item.path("holds").textValue());
      }
    }
    return says;
  }

  @Test
  void twoLayersAsText() {
    Ran ran = Ran.with("policies", "show");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out()
            .startsWith(
                """
                Nasogastric tubes in adults, edition 3

                Layers, the lowest first
                  1 floor-england-adult, edition 1, floor
                  2 example-general-adult, edition 3, hospital
                """),
        ran.out());
    List<String> lines = ran.out().lines().toList();
    int at = lines.indexOf("  ph-cut-off: 5.0");
    assertTrue(at > 0, ran.out());
    assertTrue(lines.get(at + 1).startsWith("      floor-england-adult, "), lines.get(at + 1));
    assertEquals("        says: 5.5", lines.get(at + 2));
    assertTrue(lines.get(at + 3).startsWith("      example-general-adult, "), lines.get(at + 3));
    assertEquals("        says: 5.0", lines.get(at + 4));
    assertTrue(ran.out().contains("policy.yaml:"), "each with its place");
  }

  @Test
  void threeAndFourLayersEachWithItsSay() throws IOException {
    unit("surgical-wards", "example-general-adult", "ph-cut-off: {is: 4.5, unit: pH, why: Ours.}");
    unit("ward-seven", "surgical-wards", "check-every: {is: 8, unit: h, why: Ours.}");
    Ran three = show("surgical-wards", "--json");
    assertEquals(0, three.code(), three.out());
    JsonNode third = Repo.json(three.out());
    assertEquals(3, third.path("layers").size());
    assertEquals(
        List.of(
            "floor-england-adult: 5.5", "example-general-adult: 5.0", "surgical-wards: 4.5", "4.5"),
        says(third, "Number", "ph-cut-off"));
    Ran four = show("ward-seven", "--json");
    assertEquals(0, four.code(), four.out());
    JsonNode fourth = Repo.json(four.out());
    assertEquals(4, fourth.path("layers").size());
    assertEquals(
        List.of(
            "floor-england-adult: 24 hours",
            "example-general-adult: 12 hours",
            "ward-seven: 8 hours",
            "8 hours"),
        says(fourth, "Number", "check-every"));
    assertEquals("4.5", says(fourth, "Number", "ph-cut-off").get(3), "from two layers below");
    Ran proved = Ran.with("prove", "--policy", folder.resolve("ward-seven").toString());
    assertEquals(0, proved.code(), proved.out());
  }

  /** The fourth layer is looser than the second, and the third says nothing of it. */
  @Test
  void aLayerLooserThanAnyBelowItIsRefusedWithBothPlaces() throws IOException {
    unit("surgical-wards", "example-general-adult", "check-every: {is: 12, unit: h, why: Ours.}");
    unit("ward-seven", "surgical-wards", "ph-cut-off: {is: 5.5, unit: pH, why: Ours.}");
    Ran ran = show("ward-seven");
    assertEquals(3, ran.code(), ran.out());
    assertTrue(ran.err().contains("`ph-cut-off` is 5.5 here and 5 in the layer below"), ran.err());
    assertTrue(ran.err().contains("the layer below has it here"), ran.err());
  }

  @Test
  void aPolicyNamedWithoutShowIsHelped() {
    Ran ran = Ran.with("policies", "example-general-adult");
    assertEquals(2, ran.code());
    assertTrue(
        ran.err().contains("write: tidemark policies show example-general-adult"), ran.err());
    assertEquals(2, Ran.with("policies", "show", "example-generl-adult").code());
  }
}
