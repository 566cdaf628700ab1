package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.trial.Trial;
import org.tidemark.trial.TrialReport;

/** One small policy for each thing that the language can say beside plain rules, with its cases. */
class ConstructExamplesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "own-findings",
        "by-use-and-purpose",
        "length-outside",
        "feed-after-use",
        "policy-with-room-for-plans",
        "plan-for-one-patient",
        "steps-by-population",
        "strip-may-be-off"
      })
  void theExampleAnswersAsItSays(String name) {
    String folder = "constructs/" + name;
    assertEquals(name, Shipped.policy(folder).name());
    Trial trial = Trial.of(Shipped.policy(folder), Shipped.words());
    TrialReport report =
        Shipped.sound(trial.report(Shipped.cases(folder), TODAY, (done, of) -> {}));
    assertEquals(List.of(), report.failures());
    assertEquals(List.of(), report.coverage().uncoveredRules());
    assertEquals(List.of(), report.coverage().uncoveredReadings());
  }
}
