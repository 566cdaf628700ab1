package org.tidemark.report;

import java.io.IOException;
import org.tidemark.model.Header;
import org.tidemark.source.Place;
import org.tidemark.trial.Coverage;
import org.tidemark.trial.Explanation;
import org.tidemark.trial.TrialReport;
import org.tidemark.trial.TrialResult;
import org.tidemark.trial.WorkedCase;

/** What came of worked cases, as JSON. */
public final class TrialJson {
  private TrialJson() {}

  public static String of(TrialReport report) {
    return Json.object(
        json -> {
          head(json, report.policy());
          json.flag("all-pass", report.allPass());
          json.flag("all-covered", report.coverage().complete());
          count(json, "cases", report.passed(), "passed", report.results().size());
          coverage(json, report.coverage());
          json.objects("results", report.results(), TrialJson::result);
        });
  }

  private static void head(Json json, Header policy) throws IOException {
    json.text("policy", policy.name());
    json.number("edition", policy.edition());
  }

  private static void coverage(Json json, Coverage coverage) throws IOException {
    count(json, "rules", coverage.rulesCovered(), "covered", coverage.rules().size());
    count(json, "readings", coverage.readingsCovered(), "covered", coverage.readings().size());
    json.objects(
        "uncovered-rules",
        coverage.uncoveredRules(),
        (each, rule) -> {
          each.text("question", rule.question());
          each.text("rule", rule.rule());
          place(each, rule.place());
        });
    json.objects(
        "uncovered-readings",
        coverage.uncoveredReadings(),
        (each, reading) -> {
          each.text("question", reading.question());
          each.text("finding", reading.finding());
          each.text("reading", reading.reading());
          each.texts("limits", reading.limits());
          place(each, reading.place());
        });
  }

  private static void count(Json json, String name, int some, String what, int all)
      throws IOException {
    json.object(
        name,
        counts -> {
          counts.number(what, some);
          counts.number("all", all);
        });
  }

  private static void place(Json json, Place place) throws IOException {
    json.text("file", place.span().source().name());
    json.number("line", place.span().line());
    json.number("column", place.span().column());
  }

  private static void result(Json json, TrialResult result) throws IOException {
    WorkedCase worked = result.worked();
    json.text("case", worked.name());
    json.text("question", worked.question());
    json.text("expected", worked.expect().word());
    json.text("outcome", result.decision().outcome().word());
    json.text("kind", result.decision().kind().word());
    json.flag("passes", result.passes());
    json.texts("differences", result.differences());
    place(json, worked.place());
  }

  public static String of(Header policy, Explanation explanation) {
    return Json.object(
        json -> {
          head(json, policy);
          result(json, explanation.result());
          json.objects(
              "steps",
              explanation.steps(),
              (each, step) -> {
                each.text("step", step.name());
                each.text("heading", step.heading());
                each.texts("lines", step.lines());
              });
        });
  }
}
