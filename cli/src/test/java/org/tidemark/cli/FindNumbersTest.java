package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

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

  private static JsonNode json(String typed) {
    return Repo.json(Ran.with("find", typed, "--json").out());
  }
}
