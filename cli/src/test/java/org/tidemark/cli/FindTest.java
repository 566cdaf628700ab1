package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The verb find, on the shipped guidance. */
class FindTest {
  @Test
  void noAspirateFindsThatTopicFirstAndNotAspiration() {
    Ran ran = Ran.with("find", "no", "aspirate", "--json");
    assertEquals(0, ran.code());
    JsonNode first = Repo.json(ran.out()).path("hits").path(0);
    assertEquals("no-aspirate", first.path("article").asText());
    assertEquals("Nothing comes back when you draw on the tube", first.path("title").asText());
    assertEquals("example-general-adult", first.path("policy").asText());
    assertEquals("3", first.path("edition").asText());
    assertEquals("tidemark", first.path("origin").asText());
    assertTrue(first.path("reasons").isEmpty(), first::toString);
  }

  @Test
  void theTextHasThePolicysNumber() {
    String text = Ran.with("find", "ph", "5.5", "--limit", "1").out();
    assertTrue(text.contains("\n\n1  Which pH lets you use the tube\n"), text);
    assertTrue(text.contains("5.0 or less"), text);
  }

  @Test
  void reasonsAreGivenOnRequest() {
    String text = Ran.with("find", "ph", "5.5", "--limit", "1", "--explain").out();
    assertTrue(text.contains("   - moved up for the number typed\n"), text);
  }

  @Test
  void whatIsBegunIsCompleted() {
    Ran ran = Ran.with("find", "--suggest", "no", "asp");
    assertEquals(0, ran.code());
    assertTrue(ran.out().startsWith("no aspirate\n"), ran.out());
    JsonNode json = Repo.json(Ran.with("find", "--suggest", "tube", "--json").out());
    assertEquals("tube", json.path("typed").asText());
    assertEquals(8, json.path("suggestions").size());
    assertEquals(5, Ran.with("find", "--suggest", "qwertzu").code());
  }

  @Test
  void nothingFoundHasItsOwnCode() {
    assertEquals(new Ran(5, "No guidance holds: qwertzu\n", ""), Ran.with("find", "qwertzu"));
  }

  @Test
  void anUnknownPopulationIsAWrongCommandLine() {
    assertEquals(
        new Ran(
            2,
            "",
            """
            `cat` is none of: adult, child, newborn
            Try: tidemark find --help
            """),
        Ran.with("find", "lung", "--for", "cat"));
  }
}
