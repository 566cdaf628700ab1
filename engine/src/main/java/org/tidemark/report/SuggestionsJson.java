package org.tidemark.report;

import java.util.List;

/** What a reader may be about to type, as JSON. */
public final class SuggestionsJson {
  private SuggestionsJson() {}

  public static String of(String typed, List<String> suggestions) {
    return Json.object(
        json -> {
          json.text("typed", typed);
          json.texts("suggestions", suggestions);
        });
  }
}
