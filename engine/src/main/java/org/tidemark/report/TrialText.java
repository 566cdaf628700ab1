package org.tidemark.report;

import java.util.List;
import org.tidemark.model.Header;
import org.tidemark.trial.Coverage;
import org.tidemark.trial.Explanation;
import org.tidemark.trial.TrialReport;
import org.tidemark.trial.TrialResult;

/** What came of worked cases, as text. */
public final class TrialText {
  private TrialText() {}

  /** Counts first, then what fails, then what no case reaches. */
  public static String of(TrialReport report) {
    Sheet sheet = new Sheet();
    title(sheet, report.policy());
    Coverage coverage = report.coverage();
    sheet.line(count("Cases that pass:        ", report.passed(), report.results().size()));
    sheet.line(count("Rules covered:          ", coverage.rulesCovered(), coverage.rules().size()));
    sheet.line(
        count("Readings near a limit:  ", coverage.readingsCovered(), coverage.readings().size()));
    report.failures().forEach(r -> failure(sheet, r));
    uncovered(
        sheet,
        "No case makes these rules fire",
        coverage.uncoveredRules().stream()
            .map(r -> r.question() + ": `" + r.rule() + "`, " + r.place())
            .toList());
    uncovered(
        sheet,
        "No case states these readings, at a limit or one step beside it",
        coverage.uncoveredReadings().stream()
            .map(
                r ->
                    r.question()
                        + ": "
                        + r.finding()
                        + " "
                        + r.reading()
                        + ", for "
                        + String.join(" and ", r.limits())
                        + ", "
                        + r.place())
            .toList());
    return sheet.toString();
  }

  private static void title(Sheet sheet, Header header) {
    sheet.line(header.title() + ", edition " + header.edition());
  }

  private static String count(String what, int some, int all) {
    return what + some + " of " + all;
  }

  private static void failure(Sheet sheet, TrialResult result) {
    sheet.heading("!! NOT SO: " + result.worked().name() + ", " + result.worked().place());
    sheet.bulleted(result.differences());
  }

  private static void uncovered(Sheet sheet, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      sheet.heading(heading).bulleted(lines);
    }
  }

  /** One case, step by step. */
  public static String of(Header policy, Explanation explanation) {
    Sheet sheet = new Sheet();
    title(sheet, policy);
    sheet.paragraph(
        "Case "
            + explanation.result().worked().name()
            + ": "
            + explanation.result().worked().source());
    List<Explanation.Step> steps = explanation.steps();
    for (int i = 0; i < steps.size(); i++) {
      sheet.heading((i + 1) + " " + steps.get(i).heading()).bulleted(steps.get(i).lines());
    }
    return sheet.toString();
  }
}
