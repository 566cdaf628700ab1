package org.tidemark.print;

import java.time.LocalDate;
import java.util.Optional;
import org.tidemark.model.Header;
import org.tidemark.model.Status;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;

/** Whether cards of a policy may be printed today, and what they say about themselves. */
final class StripChecks {
  private final Header header;
  private final LocalDate today;

  StripChecks(Header header, LocalDate today) {
    this.header = header;
    this.today = today;
  }

  /** Why no card of the policy may be printed, if so. */
  Optional<Diagnostic> notPrintable() {
    if (!header.kind().servesBedside() || header.status() == Status.WITHDRAWN) {
      return Optional.of(
          error(
              DiagnosticCode.NOT_FOR_THE_BEDSIDE,
              "no card is printed from " + header.name(),
              "print from an approved policy of a hospital"));
    }
    if (header.reviewBy().isEmpty()) {
      return Optional.of(
          error(
              DiagnosticCode.MISSING_KEY,
              "the policy has no review date, so a card could not say until when it holds",
              "add a line `review-by: ...` with a date"));
    }
    if (header.reviewPassed(today)) {
      return Optional.of(
          error(
              DiagnosticCode.REVIEW_PASSED,
              "the review date has passed; a card would be out of date when it is printed",
              "have the policy reviewed, and print from the new edition"));
    }
    return header.reviewBy().get().isBefore(issued())
        ? Optional.of(
            error(
                DiagnosticCode.DATES_OUT_OF_ORDER,
                "the review date lies before the day of approval",
                "correct one of the two dates"))
        : Optional.empty();
  }

  CardStrip strip(String title, String code, String forWhom) {
    return new CardStrip(
        header.owner(),
        title,
        code,
        forWhom,
        Integer.toString(header.edition()),
        issued(),
        header.reviewBy().orElse(today),
        header.approval().map(Header.Approval::by).orElse(header.owner()),
        header.approval().map(Header.Approval::reference).orElse("no reference yet"),
        1,
        1,
        header.status() != Status.APPROVED || header.approval().isEmpty());
  }

  private LocalDate issued() {
    return header.approval().map(Header.Approval::on).orElse(today);
  }

  private Diagnostic error(DiagnosticCode code, String message, String help) {
    return Diagnostic.error(code, header.place().span(), message).help(help);
  }
}
