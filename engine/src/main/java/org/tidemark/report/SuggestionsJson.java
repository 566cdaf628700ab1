package org.tidemark.report;

import java.util.List;
import org.tidemark.source.Diagnostic;

/** What a reader may be about to type, as JSON. */
public final class SuggestionsJson {
  private SuggestionsJson() {}

  public static String of(String typed, List<String> suggestions, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("typed", typed);
          json.texts("suggestions", suggestions);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }
}
