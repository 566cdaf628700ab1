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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The verb check, on the shipped example hospital. */
class CheckTest {
  private static Ran check(String example, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("check", "--findings", Repo.example(example), "--today", "2026-11-25"));
    args.addAll(List.of(more));
    return Ran.with(args.toArray(String[]::new));
  }

  private static List<String> texts(JsonNode array, String field) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.path(field).asText()));
    return texts;
  }

  @ParameterizedTest
  @CsvSource({
    "clear-check,        proceed,  proceeds,  true",
    "one-step-above,     hold,     not-yet,   true",
    "new-breathing-sign, escalate, escalates, true",
    "reading-missing,    hold,     unsettled, false"
  })
  void outcomeAndKind(String example, String outcome, String kind, boolean settled) {
    Ran ran = check(example, "--json");
    assertEquals(0, ran.code(), "an outcome is an answer, not an error");
    assertEquals("", ran.err());
    JsonNode json = Repo.json(ran.out());
    assertEquals(outcome, json.path("outcome").asText());
    assertEquals(kind, json.path("kind").asText());
    assertEquals(settled, json.path("settled").asBoolean());
  }

  @ParameterizedTest
  @ValueSource(strings = {"clear-check", "one-step-above", "new-breathing-sign", "reading-missing"})
  void asText(String example) {
    assertEquals(new Ran(0, Repo.golden("check/" + example + ".txt"), ""), check(example));
  }

  @Test
  void fieldsOfTheJson() {
    JsonNode json = Repo.json(check("clear-check", "--json").out());
    List<String> names = new ArrayList<>();
    json.fieldNames().forEachRemaining(names::add);
    assertEquals(
        List.of(
            "question",
            "asks",
            "outcome",
            "word",
            "kind",
            "settled",
            "possible",
            "next",
            "call",
            "reasons",
            "forced-by",
            "would-proceed-if",
            "does-not-count",
            "counts-as",
            "ask",
            "to-settle",
            "ways",
            "write-down",
            "cautions",
            "policy",
            "remarks"),
        names);
    assertEquals("use", json.path("question").asText());
    assertEquals("May anything go down this tube now?", json.path("asks").asText());
    assertEquals("Proceed", json.path("word").asText());
    assertEquals("[\"proceed\"]", json.path("possible").toString());
    JsonNode reason = json.path("reasons").path(0);
    assertEquals("acid-aspirate", reason.path("rule").asText());
    assertEquals("floor-england-adult", reason.path("layer").asText());
    assertEquals("allow", reason.path("effect").asText());
    assertEquals("position", reason.path("about").asText());
    assertEquals(
        "Aspirate of pH 1.0 to 5.0 is not from the airway.", reason.path("because").asText());
    assertEquals("A tip in the gullet.", reason.path("does-not-rule-out").asText());
    assertEquals("false", reason.path("set-aside").toString());
    assertEquals("read", reason.path("standing").asText());
    assertTrue(texts(reason.path("sources"), "id").contains("PH-01"), reason::toString);
    assertTrue(reason.path("sources").path(0).path("publication").isNull(), reason::toString);
    assertEquals(
        "{\"name\":\"example-general-adult\",\"title\":\"Nasogastric tubes in adults\","
            + "\"owner\":\"Example General Hospital\",\"edition\":3,\"status\":\"approved\","
            + "\"review-by\":\"2028-09-01\",\"built-on\":[\"floor-england-adult\"]}",
        json.path("policy").toString());
  }

  @Test
  void whatForcesAnEscalationIsTheSignAlone() {
    JsonNode json = Repo.json(check("new-breathing-sign", "--json").out());
    assertEquals(
        "{\"is\":\"found\",\"findings\":[{\"finding\":\"breathing\","
            + "\"asks\":\"How is the breathing?\",\"found\":\"New trouble, or worse\","
            + "\"options\":[\"new\"],\"lowest\":null,\"highest\":null,\"got-anew-by\":null}]}",
        json.path("forced-by").toString());
    assertEquals(
        "{\"is\":\"not-asked\",\"findings\":[]}",
        json.path("would-proceed-if").toString(),
        "an escalation is not argued with");
  }

  @Test
  void aHighReadingWouldHaveToBeALowerOneOfANewSample() {
    JsonNode json = Repo.json(check("one-step-above", "--json").out());
    assertEquals(
        "{\"is\":\"found\",\"findings\":[{\"finding\":\"ph\","
            + "\"asks\":\"What did the strip read?\",\"found\":\"1.0 to 5.0 pH\",\"options\":[],"
            + "\"lowest\":\"1.0\",\"highest\":\"5.0\",\"got-anew-by\":\"Test a new sample.\"}]}",
        json.path("would-proceed-if").toString());
    assertEquals(
        List.of("tube-purpose", "occasion", "any-sign", "any-risk", "any-warning", "ph", "film"),
        texts(json.path("forced-by").path("findings"), "finding"));
  }

  @Test
  void anUnsettledCaseIsForcedByNothing() {
    JsonNode json = Repo.json(check("reading-missing", "--json").out());
    assertEquals("not-asked", json.path("forced-by").path("is").asText());
    assertEquals("not-asked", json.path("would-proceed-if").path("is").asText());
  }

  @Test
  void whatSettlesAnUnfinishedCaseAndOneWayToEachAnswer() {
    String text = check("reading-missing", "--to-settle").out();
    assertTrue(
        text.contains(
            """

            Fewest to find out for the answer to be settled, whatever they show
              1 What did the strip read? (a reading in pH / Not recorded)

            One way to: Proceed
              - What did the strip read? 1.0 to 5.0 pH.

            One way to: Do not feed
              - What did the strip read? 0.0 to 0.5 pH or Not recorded.
              Enter what is found, never what is wanted.

            """),
        text);
  }

  @Test
  void waysAsJson() {
    JsonNode json = Repo.json(check("reading-missing", "--to-settle", "--json").out());
    assertEquals("found", json.path("to-settle").path("is").asText());
    assertEquals(List.of("ph"), texts(json.path("to-settle").path("findings"), "finding"));
    assertEquals(List.of("proceed", "hold"), texts(json.path("ways"), "outcome"));
    JsonNode proceed = json.path("ways").path(0).path("by").path("findings").path(0);
    assertEquals("1.0 to 5.0 pH", proceed.path("found").asText());
  }

  @Test
  void aSettledCaseHasNothingLeftToFindOut() {
    String text = check("one-step-above", "--to-settle").out();
    assertTrue(text.contains("whatever they show\n  Nothing. The answer is settled.\n"), text);
    JsonNode json = Repo.json(check("one-step-above", "--json").out());
    assertEquals("{\"is\":\"not-asked\",\"findings\":[]}", json.path("to-settle").toString());
    assertEquals("[]", json.path("ways").toString());
  }

  @Test
  void aPatientOfAnotherPolicyNeverProceedsHere() throws IOException {
    Path file = Files.createTempFile(Path.of("target"), "findings", ".yaml");
    String adult = Files.readString(Path.of(Repo.example("clear-check")), StandardCharsets.UTF_8);
    Files.writeString(
        file, adult.replace("population: adult", "population: child"), StandardCharsets.UTF_8);
    Ran ran = Ran.with("check", "--findings", file.toString());
    assertTrue(
        ran.out()
            .contains(
                """

                What would have to be found for it to proceed
                  Nothing that can still be found out would let it proceed.

                """),
        ran::out);
  }

  @Test
  void aMissingReadingIsAskedFor() {
    JsonNode json = Repo.json(check("reading-missing", "--json").out());
    JsonNode need = json.path("ask").path(0);
    assertEquals(List.of("ph"), texts(json.path("ask"), "finding"));
    assertEquals("What did the strip read?", need.path("asks").asText());
    assertEquals("pH", need.path("unit").asText());
    assertEquals(List.of("not-recorded"), texts(need.path("options"), "name"));
    assertEquals("[\"proceed\",\"hold\"]", json.path("possible").toString());
  }

  @Test
  void anEscalationSaysWhomToCall() {
    JsonNode json = Repo.json(check("new-breathing-sign", "--json").out());
    assertEquals("Stop and call", json.path("word").asText());
    assertEquals(List.of("outreach"), texts(json.path("call"), "contact"));
    assertEquals("Critical care outreach", json.path("call").path(0).path("who").asText());
    assertEquals("Always", json.path("call").path(0).path("when").asText());
    assertEquals("Stop what is running.", json.path("next").path(0).asText());
  }

  @Test
  void sourcesAreNamedOnRequest() {
    JsonNode json = Repo.json(check("clear-check", "--json", "--sources").out());
    JsonNode source = json.path("reasons").path(0).path("sources").path(0);
    assertEquals("PH-01", source.path("id").asText());
    assertTrue(
        source.path("publication").asText().startsWith("NHS England. Enduring standards"),
        source::toString);
    String text = check("clear-check", "--sources").out();
    assertTrue(text.contains("\nSources\n  PH-01  NHS England. Enduring standards"), text);
  }

  @Test
  void aPassedReviewDateIsSaid() {
    String text =
        Ran.with("check", "--findings", Repo.example("clear-check"), "--today", "2028-09-02").out();
    assertTrue(
        text.contains("  - This policy's review date was 1 September 2028. Check that it is still"),
        text);
  }

  @Test
  void theReviewDateItselfIsStillInForce() {
    String text =
        Ran.with("check", "--findings", Repo.example("clear-check"), "--today", "2028-09-01").out();
    assertTrue(!text.contains("review date was"), text);
  }

  @Test
  void withoutATerminalFindingsAreNeeded() {
    assertEquals(
        new Ran(
            2,
            "",
            """
            There is no terminal to ask at. Give the findings in a file: --findings FILE
            Try: tidemark check --help
            """),
        Ran.with("check"));
  }

  @Test
  void aFloorAnswersNobody() {
    Ran ran = check("clear-check", "--policy", "floor-england-adult");
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertTrue(
        ran.err()
            .contains("`floor-england-adult` is a floor: hospitals build on it, and it answers"),
        ran::err);
    assertTrue(ran.err().contains("help: name your hospital's own policy"), ran::err);
  }

  @Test
  void twoDifferentQuestionsAreRefused() {
    Ran ran = check("clear-check", "--question", "pass");
    assertEquals(2, ran.code());
    assertTrue(
        ran.err().startsWith("The file asks `use` and --question asks `pass`. Ask one of them."),
        ran::err);
  }

  @Test
  void aQuestionThatThePolicyDoesNotAnswerGetsThoseThatItDoes() throws IOException {
    Path file = Files.createTempFile(Path.of("target"), "findings", ".yaml");
    Files.writeString(file, "ph: 5\n", StandardCharsets.UTF_8);
    Ran ran = Ran.with("check", "--findings", file.toString(), "--question", "transfer");
    assertEquals(2, ran.code());
    assertTrue(
        ran.err().contains("`example-general-adult` does not answer the question `transfer`"),
        ran::err);
    assertTrue(ran.err().contains("help: ask one of: pass, use, feed, remove\n"), ran::err);
  }

  @Test
  void anUnknownPolicyGetsTheNearestName() {
    Ran ran = check("clear-check", "--policy", "example-general-adlut");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("did you mean `example-general-adult`?"), ran::err);
  }

  @Test
  void aDayThatIsNoneIsAWrongCommandLine() {
    Ran ran = Ran.with("check", "--today", "25/11/2026");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("write year-month-day, such as 2026-11-25"), ran::err);
  }
}
