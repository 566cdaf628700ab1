package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Span;

/** What there is to say about a text, as JSON. */
public final class DiagnosticsJson {
  private DiagnosticsJson() {}

  public static String of(List<Diagnostic> diagnostics) {
    return Json.object(json -> json.objects("problems", diagnostics, DiagnosticsJson::problem));
  }

  static void problem(Json json, Diagnostic problem) throws IOException {
    json.text("code", problem.code().id());
    json.text("severity", problem.severity().name().toLowerCase(Locale.ROOT));
    place(json, problem.at());
    json.text("message", problem.message());
    json.text("help", problem.help());
    json.objects(
        "related",
        problem.related(),
        (related, other) -> {
          place(related, other.at());
          related.text("message", other.message());
        });
    json.text("accepted-by", problem.acceptance().map(Diagnostic.Acceptance::by));
    json.text("accepted-why", problem.acceptance().map(Diagnostic.Acceptance::why));
  }

  private static void place(Json json, Span at) throws IOException {
    json.text("file", at.source().name());
    json.number("line", at.line());
    json.number("column", at.column());
    json.text("text", at.text());
  }
}
