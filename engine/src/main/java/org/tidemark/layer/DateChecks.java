package org.tidemark.layer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Days;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;

/** What a day makes of a policy: its review date may have passed, its approval be still to come. */
public final class DateChecks {
  private DateChecks() {}

  /** What there is to remark on a policy on that day. */
  public static List<Diagnostic> of(Header header, LocalDate today) {
    List<Diagnostic> said = new ArrayList<>();
    if (header.reviewPassed(today)) {
      said.add(
          Diagnostic.warning(
                  DiagnosticCode.REVIEW_PASSED,
                  header.place().span(),
                  "the review date of `"
                      + header.name()
                      + "` passed on "
                      + header.reviewBy().map(Days::of).orElse(""))
              .help("review it and issue a new edition; its cards are not printed until then"));
    }
    header
        .approval()
        .filter(a -> a.on().isAfter(today))
        .ifPresent(
            a ->
                said.add(
                    Diagnostic.warning(
                            DiagnosticCode.NOT_YET_APPROVED,
                            header.place().span(),
                            "`" + header.name() + "` is approved only on " + Days.of(a.on()))
                        .help("check the date under `approved`")));
    return said;
  }
}
