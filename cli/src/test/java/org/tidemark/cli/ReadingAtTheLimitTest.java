package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A copy of the invented hospital's policy says that a strip may be off by half a unit: every verb
 * that speaks of a reading then speaks of all that it may be.
 */
class ReadingAtTheLimitTest {
  private static final String SHIPPED =
      "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml";
  private static final String MAY_BE_OFF =
      "A reading may be off by 0.5 pH. Only a reading that passes by that much passes.";

  @TempDir Path folder;
  private String policy = "";

  @BeforeEach
  void copy() throws IOException {
    String text = Files.readString(Path.of(Repo.file(SHIPPED)), StandardCharsets.UTF_8);
    String off = "values:\n  strip-error: {is: 0.5, unit: pH, how-far-off: ph, why: \"Ours.\"}\n";
    Path file = folder.resolve("policy.yaml");
    Files.writeString(file, text.replace("values:\n", off), StandardCharsets.UTF_8);
    policy = file.toString();
  }

  /** The limit is 5.0, and above 4.0 a second person reads the strip. */
  @ParameterizedTest
  @CsvSource({
    "3.5, lets the reading count.",
    "4.0, lets the reading count only with a second reader.",
    "4.5, lets the reading count only with a second reader.",
    "5.0, does not let the reading count.",
    "4.7, does not let the reading count."
  })
  void whatThePolicySaysAtANumber(String ph, String verdict) {
    Ran ran = Ran.with("find", "ph " + ph, "--policy", policy, "--json");
    String says = Repo.json(ran.out()).path("at-this-number").asText();
    assertTrue(says.contains("(Nasogastric tubes in adults) " + verdict + " " + MAY_BE_OFF), says);
  }

  @Test
  void itIsNotExportedAsATable() {
    Ran ran = Ran.with("export", policy, "--dmn", "--question", "use");
    assertEquals(2, ran.code(), ran::toString);
    assertEquals("", ran.out());
    assertTrue(
        ran.err()
            .contains(
                "Not exported: the policy says how far readings of `ph` may be off, and a decision table takes each reading as it is."),
        ran::err);
    assertEquals(0, Ran.with("export", policy, "--dmn", "--question", "pass").code());
  }

  /** The example's card is full; on shorter words there is room for the line. */
  @Test
  void aCardSaysItFirst() throws IOException {
    Path card = folder.resolve("card.html");
    String text = Files.readString(Path.of(policy), StandardCharsets.UTF_8);
    String shorter =
        text.replace(", and write on the request that it is for the tube.", ".")
            .replace(" until the X-ray is read and the result is written]", "]")
            .replaceFirst("hours: \\{days.*\\}, else: site-lead", "when: Always")
            .replace("If nothing comes, ask for an X-ray that shows the tip", "Ask for an X-ray");
    Files.writeString(Path.of(policy), shorter, StandardCharsets.UTF_8);
    Ran ran =
        Ran.with(
            "card",
            "before-first-use",
            "--policy",
            policy,
            "--today",
            "2026-11-25",
            "--out",
            card.toString());
    assertEquals(0, ran.code(), ran::toString);
    String html = Files.readString(card, StandardCharsets.UTF_8);
    int said = html.indexOf("A reading (pH) may be off by 0.5&nbsp;pH. Pass by that much.");
    assertTrue(said > 0 && said < html.indexOf("The pH is 1.0&nbsp;to 5.0"), html);
  }

  /**
   * "1" is the first option of a choice, and a reading of 1.0, the lower limit; only of the sample
   * something else is said, which every other question refuses.
   */
  @Test
  void whatWasReadIsNotAskedAgain() {
    List<String> typed = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      typed.addAll(List.of("obtained", "1"));
    }
    Ran ran = Ran.typing(typed, "check", "--policy", policy, "--today", "2026-11-25");
    assertEquals(0, ran.code(), ran::toString);
    assertTrue(ran.out().contains("A reading of 1.0 pH counts as 0.5 to 1.5 pH"), ran::out);
    assertEquals(2, ran.out().split("What did the strip read\\?\n", -1).length, ran::out);
  }
}
