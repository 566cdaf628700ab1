package org.tidemark.print;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Departure;
import org.tidemark.model.Header;
import org.tidemark.model.Status;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;

/** Whether cards of a policy may be printed today, and what they say about themselves. */
final class StripChecks {
  private final Header header;
  private final List<Departure> departures;
  private final LocalDate today;

  StripChecks(EffectivePolicy policy, LocalDate today) {
    this.header = policy.header();
    this.departures = policy.departed().stream().map(Departed::departure).toList();
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
        : departureEnded();
  }

  /** A card that shows a departure cannot hold longer than the departure does. */
  private Optional<Diagnostic> departureEnded() {
    LocalDate from = issued().isAfter(today) ? issued() : today;
    return departures.stream()
        .filter(d -> d.endedBefore(from))
        .findFirst()
        .map(
            d ->
                Diagnostic.error(
                        DiagnosticCode.DEPARTURE_ENDED,
                        d.place().span(),
                        "the departure in the "
                            + d.kind().word()
                            + " `"
                            + d.name()
                            + "` ended on "
                            + d.until().map(CardDate::words).orElse(""))
                    .help("end it in the policy, or have it approved again with a later day"));
  }

  private LocalDate useUntil() {
    return Stream.concat(
            header.reviewBy().stream(), departures.stream().flatMap(d -> d.until().stream()))
        .min(Comparator.naturalOrder())
        .orElse(today);
  }

  CardStrip strip(String title, String code, String forWhom) {
    return new CardStrip(
        header.owner(),
        title,
        code,
        forWhom,
        Integer.toString(header.edition()),
        issued(),
        useUntil(),
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
