package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The verb check with a person at the keyboard. */
class InterviewTest {
  private static Ran check(String... typed) {
    return Ran.typing(List.of(typed), "check", "--today", "2026-11-25");
  }

  private static int asked(Ran ran, String question) {
    return ran.out().split(java.util.regex.Pattern.quote(question), -1).length - 1;
  }

  @Test
  void itStopsAskingOnceTheAnswerIsSettled() {
    Ran ran = check("1", "ward", "Feed and medicines", "1", "3", "2", "new", "never read");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("STOP AND CALL"), ran::out);
    assertEquals(0, asked(ran, "never read"), "nothing is asked after the answer is settled");
  }

  @Test
  void aChildIsOutsideAtOnce() {
    Ran ran = check("child");
    assertEquals(0, ran.code());
    assertTrue(!ran.out().contains("Where is the patient?"), ran::out);
    assertTrue(ran.out().contains("PROCEED") == false, ran::out);
  }

  @Test
  void badInputIsExplainedAndAskedAgain() {
    Ran ran = check("adlut", "1", "quit");
    assertTrue(ran.out().contains("`population` cannot be `adlut` [unknown-option]"), ran::out);
    assertTrue(ran.out().contains("did you mean `adult`?"), ran::out);
    assertEquals(1, asked(ran, "Who is the patient?"));
    assertEquals(1, asked(ran, "Where is the patient?\n"));
  }

  @Test
  void backTakesTheLastAnswerBack() {
    Ran ran = check("1", "back", "1", "quit");
    assertEquals(2, asked(ran, "Who is the patient?\n"));
  }

  @Test
  void backAtTheFirstQuestionSaysSo() {
    assertTrue(check("back", "quit").out().contains("This is the first question."));
  }

  @Test
  void quitLeavesWithAHoldAndWhatIsMissing() {
    Ran ran = check("quit");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("DO NOT FEED"), ran::out);
    assertTrue(ran.out().contains("Still to find out, in this order\n"), ran::out);
  }

  @Test
  void knowingNothingNeverProceeds() {
    Ran ran = check(Collections.nCopies(200, "").toArray(String[]::new));
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("DO NOT FEED"), ran::out);
    assertEquals(1, asked(ran, "Who is the patient?\n"), "what nobody knows is asked once");
  }

  @Test
  void aQuestionMarkExplains() {
    Ran ran = check("1", "1", "1", "1", "?", "quit");
    assertTrue(
        ran.out().contains("A tube that was used before anybody confirmed it still counts as"),
        ran::out);
  }

  @Test
  void jsonStandsAloneOnTheOutput() {
    Ran ran = Ran.typing(List.of("quit"), "check", "--json");
    JsonNode json = Repo.json(ran.out().substring(ran.out().indexOf('{')));
    assertEquals("hold", json.path("outcome").asText());
    assertTrue(ran.err().contains("Who is the patient?"), ran::err);
  }
}
