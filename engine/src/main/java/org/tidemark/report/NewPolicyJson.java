package org.tidemark.report;

import java.nio.file.Path;
import java.util.List;
import org.tidemark.source.Diagnostic;

/** A blank policy that was written, and what is missing in it, as JSON. */
public final class NewPolicyJson {
  private NewPolicyJson() {}

  public static String of(List<Path> files, List<Diagnostic> missing) {
    return Json.object(
        json -> {
          json.texts("written", files.stream().map(Path::toString).toList());
          json.objects("missing", missing, DiagnosticsJson::problem);
        });
  }
}
