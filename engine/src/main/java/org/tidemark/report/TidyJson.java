package org.tidemark.report;

import java.nio.file.Path;
import java.util.List;

/** What came of laying files out, as JSON. */
public final class TidyJson {
  private TidyJson() {}

  public static String of(List<Path> written, List<Path> asTheyWere) {
    return Json.object(
        json -> {
          json.texts("written", written.stream().map(Path::toString).toList());
          json.texts("as-they-were", asTheyWere.stream().map(Path::toString).toList());
        });
  }
}
