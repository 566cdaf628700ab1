package org.tidemark.report;

import java.time.LocalDate;
import java.util.List;
import org.tidemark.model.Days;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;

/** The policies that there are, as text. */
public final class PoliciesText {
  private PoliciesText() {}

  /** The list, and below it the warnings that were accepted. */
  public static String of(List<Header> policies, List<Diagnostic> remarks, LocalDate today) {
    Sheet sheet = new Sheet();
    for (int i = 0; i < policies.size(); i++) {
      if (i > 0) {
        sheet.blank();
      }
      one(sheet, policies.get(i), today);
    }
    AcceptedText.append(sheet, remarks);
    return sheet.toString();
  }

  private static void one(Sheet sheet, Header header, LocalDate today) {
    sheet.line(header.name());
    sheet.hanging("  Title:      ", header.title());
    sheet.hanging("  Owner:      ", header.owner());
    sheet.hanging("  Edition:    ", header.edition() + ", " + header.status().word());
    sheet.hanging("  Kind:       ", header.kind().word() + use(header));
    sheet.hanging("  Population: ", String.join(", ", Populations.of(header)));
    sheet.hanging("  Builds on:  ", header.buildsOn().orElse("nothing"));
    sheet.hanging("  Review by:  ", review(header, today));
  }

  private static String use(Header header) {
    return header.kind().servesBedside() ? "" : " (answers nobody at a bedside)";
  }

  private static String review(Header header, LocalDate today) {
    String day = header.reviewBy().map(Days::of).orElse("not stated");
    return header.reviewPassed(today) ? day + " !! PASSED" : day;
  }
}
