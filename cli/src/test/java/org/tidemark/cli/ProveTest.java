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

/** The verbs prove and compare. */
class ProveTest {
  private static final Path HOSPITAL =
      Path.of(
          "../policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml");

  @TempDir Path folder;

  private String copy(String from, String to) throws IOException {
    String text = Files.readString(HOSPITAL, UTF_8);
    assertTrue(text.contains(from), from);
    Path file = folder.resolve("policy.yaml");
    Files.writeString(file, text.replace(from, to), UTF_8);
    return file.toString();
  }

  @Test
  void theDemoPolicyIsProved() {
    Ran ran = Ran.with("prove");
    assertEquals(0, ran.code(), ran.out());
    assertTrue(ran.out().startsWith("Nasogastric tubes in adults, edition 3\n"), ran.out());
    assertTrue(
        ran.out()
            .contains(
                "No answer to `use` is less cautious than the answer of\n    `floor-england-adult`."),
        ran.out());
  }

  /**
   * A rule that says what to do below the range is taken out; the gap is shown, and check gives the
   * same answer to it.
   */
  @Test
  void aGapIsShownWithACaseThatCheckReproduces() throws IOException {
    String policy = copy("given: {ph: too-low}", "given: {ph: too-low, checks-since: wait-kept}");
    Ran ran = Ran.with("prove", "--policy", policy, "--json");
    assertEquals(1, ran.code(), ran.out());
    JsonNode claim = refuted(Repo.json(ran.out()));
    assertEquals("no-gap", claim.path("claim").textValue());
    assertEquals("use", claim.path("question").textValue());
    Path findings = folder.resolve("case.yaml");
    Files.writeString(findings, claim.path("case").path("findings").toString(), UTF_8);
    Ran check = Ran.with("check", "--policy", policy, "--findings", findings.toString(), "--json");
    assertEquals(0, check.code(), check.err());
    assertEquals("hold", Repo.json(check.out()).path("outcome").textValue());
    assertEquals("not-covered", Repo.json(check.out()).path("kind").textValue());
  }

  /** A policy's own words stand with what they come to and who said them. */
  @Test
  void whatThePolicyItselfSaysIsListedAndProved() {
    Ran text = Ran.with("prove");
    assertTrue(
        text.out()
            .contains(
                """
                  - Near the limit nothing goes down on the word of one reader.
                    use, given occasion: First use since it was passed; ph: above 4.0, and 5.0
                    or less; ph readers: One person; film: None for this check: never Proceed.
                    Said by example-general-adult (PH-36, PH-37).
                """),
        text.out());
    JsonNode said = about(Repo.json(Ran.with("prove", "--json").out()), "elsewhere-is-escalated");
    assertEquals("always", said.path("claim").textValue());
    assertEquals("floor-england-adult", said.path("said-by").textValue());
    assertEquals("always Stop and call", said.path("answer").textValue());
    assertEquals("[\"MT-35\",\"MT-38\"]", said.path("sources").toString());
    assertEquals("proved", said.path("verdict").textValue());
  }

  /** Nothing is printed of a policy that does not keep its word, and its sheet says so. */
  @Test
  void aPolicyThatRefutesAClaimIsNeitherCardedNorSignedOff() throws IOException {
    String policy = copy("ph-readers: [one, two-differ]}", "ph-readers: [two-differ]}");
    String out = folder.resolve("out.html").toString();
    Ran card = Ran.with("card", "tray-fine-feeding", "--policy", policy, "--out", out);
    assertEquals(1, card.code(), card.out());
    assertTrue(
        card.err()
            .contains(
                "this is not so: Near the limit nothing goes down on the word of one reader."
                    + " [claim-not-proved]"),
        card.err());
    assertTrue(Files.notExists(Path.of(out)), "no card is written");
    Ran sheet = Ran.with("sign-off", "--policy", policy, "--out", out);
    assertEquals(1, sheet.code(), sheet.out());
    assertTrue(
        Files.readString(Path.of(out), UTF_8).contains("Do not approve before this is settled"),
        "the sheet itself says so");
  }

  private static JsonNode about(JsonNode proofs, String subject) {
    for (JsonNode claim : proofs.path("claims")) {
      if (claim.path("about").asText().equals(subject)) {
        return claim;
      }
    }
    throw new AssertionError("nothing is claimed about " + subject);
  }

  private static JsonNode refuted(JsonNode proofs) {
    for (JsonNode claim : proofs.path("claims")) {
      if (claim.path("verdict").textValue().equals("refuted")) {
        return claim;
      }
    }
    throw new AssertionError("nothing is refuted");
  }

  @Test
  void anEditionEqualsItself() {
    Ran ran = Ran.with("compare", "example-general-adult", HOSPITAL.toString());
    assertEquals(0, ran.code(), ran.err());
    assertTrue(
        ran.out().contains("No case is answered differently. This is proved over every case."),
        ran.out());
  }

  /**
   * One cut-off is half a unit stricter: the cases that change lie at the reading between the two,
   * and nowhere else.
   */
  @Test
  void oneCutOffChangesExactlyItsBand() throws IOException {
    Ran ran =
        Ran.with("compare", HOSPITAL.toString(), copy("    is: 5.0", "    is: 4.5"), "--json");
    assertEquals(0, ran.code(), ran.err());
    JsonNode changes = Repo.json(ran.out()).path("changes");
    assertTrue(changes.size() > 0);
    for (JsonNode change : changes) {
      assertEquals("proceed", change.path("from").textValue(), change::toString);
      assertEquals("hold", change.path("to").textValue(), change::toString);
      assertEquals(
          "5.0", change.path("case").path("findings").path("ph").textValue(), change::toString);
    }
  }

  /** Of some forty findings, those few that make the difference are told first. */
  @Test
  void aChangeIsToldByWhatMakesTheDifference() throws IOException {
    Ran ran = Ran.with("compare", HOSPITAL.toString(), copy("    is: 4.0", "    is: 3.5"));
    assertEquals(0, ran.code(), ran.err());
    String told =
        """
        2 kinds of cases are answered differently; every other case is answered as
        before.

        use, by the rule second-reader-needed: was proceed, is now hold
        What makes the difference:
          - What is about to happen? First use since it was passed
          - What did the strip read? 4.0 pH
          - Who has read this strip? One person
          - What does the X-ray for this check say of the tube? None for this check
        """;
    assertTrue(ran.out().contains(told), ran.out());
  }
}
