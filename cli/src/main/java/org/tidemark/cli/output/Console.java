package org.tidemark.cli.output;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.tidemark.report.DiagnosticsJson;
import org.tidemark.report.DiagnosticsText;
import org.tidemark.source.Diagnostic;

/**
 * What a run may write to and read from.
 *
 * @param out for answers
 * @param err for remarks and errors
 * @param terminal the person at the keyboard, if there is one
 */
public record Console(PrintWriter out, PrintWriter err, Optional<Terminal> terminal) {

  /** Writes an answer. */
  public void answer(String text) {
    out.print(text);
    out.flush();
  }

  /** Warnings and notices beside an answer. They never mix with it. */
  public void remarks(List<Diagnostic> diagnostics) {
    err.print(DiagnosticsText.of(diagnostics));
    err.flush();
  }

  /** The reasons why there is no answer: for people on the error stream, or as JSON. */
  public ExitCode refuse(List<Diagnostic> diagnostics, boolean json, ExitCode code) {
    if (json) {
      answer(DiagnosticsJson.of(diagnostics));
    } else {
      remarks(diagnostics);
    }
    return code;
  }
}
