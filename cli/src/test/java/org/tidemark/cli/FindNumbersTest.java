package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A query with a pH shows what the invented hospital's policy says at that number. */
class FindNumbersTest {
  @ParameterizedTest
  @CsvFileSource(resources = "find/numbers.csv", delimiter = '|', numLinesToSkip = 2)
  void thisPolicysAnswerAtTheNumber(String typed, String says) {
    assertEquals(says, json(typed).path("at-this-number").asText());
  }

  @Test
  void itStandsFirstInTheText() {
    String text = Ran.with("find", "ph", "5.5", "can", "i", "feed").out();
    assertTrue(
        text.startsWith(
            """
            At pH 5.5, this policy (Nasogastric tubes in adults) does not let the reading
            count. After the first high reading, put nothing down the tube for 60 minutes.
            Then draw on the tube for at least 1 mL and test again, once.

            1  Which pH lets you use the tube
            """),
        text);
  }

  @Test
  void aTubeThatThePolicyIsNotForGetsItsPointerAndNoNumber() {
    JsonNode found = json("ph 4 nj tube");
    assertTrue(found.path("at-this-number").isNull(), found::toString);
    assertEquals("nj", found.path("hits").path(0).path("article").asText());
  }

  @Test
  void anEmergencyComesBeforeANumber() {
    JsonNode found = json("ph 4 but choking and blue with feed running");
    assertTrue(found.path("at-this-number").isNull(), found::toString);
    assertTrue(found.path("hits").path(0).path("act-now").asBoolean(), found::toString);
  }

  /** What the answer withholds no hit gives away. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "ph 4 nj tube",
        "ph 4 but choking and blue with feed running",
        "ph 4 peg tube",
        "newborn ph 4",
        "ph 5 for a child"
      })
  void noHitSaysWhatTheAnswerWithholds(String typed) {
    JsonNode found = json(typed);
    assertTrue(found.path("at-this-number").isNull(), found::toString);
    assertTrue(found.path("hits").size() > 0, found::toString);
    found
        .path("hits")
        .forEach(hit -> assertTrue(hit.path("at-this-number").isNull(), hit::toString));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ph 4 | newborn | For newborn babies, use the policy of their own unit.",
        "ph 4 | child | For children, use the policy of their own unit.",
        "child with ph 4 | child | For children, use the policy of their own unit.",
        "ph 4 neonate |  | For newborn babies, use the policy of their own unit.",
        "newborn ph 4.5 | adult | For newborn babies, use the policy of their own unit.",
      })
  void anAdultNumberAnswersForNobodyElse(String typed, String whom, String says) {
    JsonNode found = whom == null ? json(typed) : json(typed, "--for", whom);
    assertTrue(found.path("at-this-number").isNull(), found::toString);
    assertEquals("The numbers here are for adults. " + says, found.path("note").asText());
  }

  @Test
  void askedForAdultsItAnswers() {
    assertTrue(json("ph 4", "--for", "adult").path("at-this-number").asText().contains("count"));
  }

  @Test
  void anotherUnitIsNoPh() {
    assertTrue(json("flush 5 ml ph strip").path("at-this-number").isNull());
    assertTrue(json("8 fr tube").path("at-this-number").isNull());
  }

  @Test
  void aFloorAnswersNobody() {
    Ran ran = Ran.with("find", "ph 5", "--policy", "floor-england-adult", "--json");
    assertTrue(Repo.json(ran.out()).path("at-this-number").isNull(), ran::toString);
  }

  private static JsonNode json(String typed, String... more) {
    List<String> args = new ArrayList<>(List.of("find", typed, "--json"));
    args.addAll(List.of(more));
    return Repo.json(Ran.with(args.toArray(String[]::new)).out());
  }
}
