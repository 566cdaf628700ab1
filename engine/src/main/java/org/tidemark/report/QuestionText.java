package org.tidemark.report;

import java.util.List;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;

/** One finding as a question, as text. */
public final class QuestionText {
  private QuestionText() {}

  /** What is asked, and what may be answered. */
  public static String of(Finding finding) {
    Sheet sheet = new Sheet().paragraph(finding.asks());
    List<Option> options = finding.domain().options();
    if (finding.domain() instanceof Domain.Measure measure) {
      sheet.hanging("  ", reading(measure));
      options.forEach(o -> sheet.hanging("  ", "or " + o.name() + " (" + o.label() + ")"));
      return sheet.toString();
    }
    return sheet.numbered(options.stream().map(Option::label).toList()).toString();
  }

  private static String reading(Domain.Measure measure) {
    return "a number in "
        + measure.unit()
        + ", "
        + measure.lowest().toPlainString()
        + " to "
        + measure.highest().toPlainString()
        + " in steps of "
        + measure.step().toPlainString();
  }

  /** What helps to answer. */
  public static String help(Finding finding) {
    Sheet sheet = new Sheet();
    finding.how().ifPresent(how -> sheet.hanging("  ", how));
    finding.renew().ifPresent(renew -> sheet.hanging("  ", "To find out: " + renew));
    sheet.hanging("  ", "It is asked because it can still change the answer.");
    return sheet.toString();
  }
}
