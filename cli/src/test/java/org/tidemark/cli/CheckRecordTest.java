package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb check, on a tube's record beside the findings. */
class CheckRecordTest {
  private static final String RUNNING =
      """
      findings: {population: adult, place: ward, tube-state: in, occasion: running}
      record:
        now: 2026-09-01 14:30
        events:
          - {at: 2026-09-01 08:30, event: position-confirmed}
          - {at: 2026-09-01 08:40, event: continuous-feed-started}
      """;

  @TempDir private Path folder;

  private Ran check(String text) {
    try {
      Path file = folder.resolve("findings.yaml");
      Files.writeString(file, text, StandardCharsets.UTF_8);
      return Ran.with("check", "--findings", file.toString(), "--today", "2026-11-25", "--json");
    } catch (IOException unwritten) {
      throw new UncheckedIOException(unwritten);
    }
  }

  private static List<String> because(JsonNode json) {
    List<String> all = new ArrayList<>();
    json.path("does-not-count").forEach(d -> all.add(d.path("because").asText()));
    return all;
  }

  @Test
  void whatLapsedWhenAndWhyIsSaid() {
    JsonNode json =
        Repo.json(check(RUNNING + "    - {at: 2026-09-01 12:00, event: vomited}\n").out());
    assertEquals("hold", json.path("outcome").asText());
    assertEquals(
        List.of(
            "It does not stand any more: the patient vomited, 1 September 2026, 12:00. "
                + "After vomiting, retching or a bout of coughing."),
        because(json));
    assertEquals(
        "The check of 1 September 2026, 08:30",
        json.path("does-not-count").path(0).path("found").asText());
  }

  @Test
  void untilWhenTheCheckStandsIsSaid() {
    JsonNode json = Repo.json(check(RUNNING).out());
    List<String> cautions = new ArrayList<>();
    json.path("cautions").forEach(c -> cautions.add(c.asText()));
    assertEquals(
        List.of(
            "The check ends at 1 September 2026, 20:30. At least every 12 hours while something runs.",
            "The check ends at 1 September 2026, 19:00. At the start of each shift, before the first use."),
        cautions.subList(0, 2));
  }

  @Test
  void anUnreadFilmDoesNotCount() {
    JsonNode json =
        Repo.json(
            check(
                    """
                    findings: {population: adult, place: ward, tube-state: in, occasion: first-use, aspirate: none}
                    record:
                      film-readings:
                        - {passing: this-one, check: this-one, this-patient: "yes", report: first, state: taken}
                    """)
                .out());
    assertEquals("hold", json.path("outcome").asText());
    assertEquals(List.of("It has not been read."), because(json));
  }

  @Test
  void aListThatIsNotWeighedIsRefused() {
    Ran ran =
        check(
            """
            findings: {population: adult}
            record:
              residuals:
                - {volume: 60}
            """);
    assertEquals(4, ran.code());
    assertEquals("", ran.err());
    JsonNode problem = Repo.json(ran.out()).path("problems").path(0);
    assertEquals("not-counted", problem.path("code").asText());
    assertEquals(
        "`example-general-adult` does not say what counts of `residuals`",
        problem.path("message").asText());
  }
}
