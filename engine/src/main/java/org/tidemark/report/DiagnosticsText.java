package org.tidemark.report;

import java.util.List;
import java.util.stream.Collectors;
import org.tidemark.source.Diagnostic;

/** What there is to say about a text, as text: place, line, caret and help of each. */
public final class DiagnosticsText {
  private DiagnosticsText() {}

  public static String of(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(Diagnostic::render).collect(Collectors.joining("\n"));
  }
}
