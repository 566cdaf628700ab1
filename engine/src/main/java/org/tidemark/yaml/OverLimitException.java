package org.tidemark.yaml;

import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Span;

/** Ends the reading of a file that is over a limit, at once. Never leaves this package. */
final class OverLimitException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Diagnostic diagnostic;

  OverLimitException(Span at, String message) {
    super(message);
    this.diagnostic =
        Diagnostic.error(DiagnosticCode.TOO_LARGE, at, message)
            .help("no policy needs this much; a bracket may be left open, or two files joined");
  }

  Diagnostic diagnostic() {
    return diagnostic;
  }
}
