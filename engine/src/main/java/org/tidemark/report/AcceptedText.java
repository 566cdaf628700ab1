package org.tidemark.report;

import java.util.List;
import org.tidemark.source.Diagnostic;

/** The warnings that were accepted, each with its reason, apart from those that are open. */
final class AcceptedText {
  private AcceptedText() {}

  static void append(Sheet sheet, List<Diagnostic> remarks) {
    List<Diagnostic> accepted = remarks.stream().filter(Diagnostic::isAccepted).toList();
    if (accepted.isEmpty()) {
      return;
    }
    sheet.heading("Accepted warnings");
    for (Diagnostic one : accepted) {
      sheet.hanging("  - ", one.code().id() + ": " + one.message() + " (" + one.at() + ")");
      one.acceptance()
          .ifPresent(a -> sheet.hanging("    ", "Accepted by " + a.by() + ": " + a.why()));
    }
  }
}
