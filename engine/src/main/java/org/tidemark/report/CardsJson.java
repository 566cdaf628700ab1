package org.tidemark.report;

import java.util.List;
import org.tidemark.print.CardPage;
import org.tidemark.source.Diagnostic;

/** Cards, as JSON: their names, or one that was written. */
public final class CardsJson {
  private CardsJson() {}

  public static String list(List<String> names, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.texts("cards", names);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  public static String written(CardPage card, String file, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("card", card.name());
          json.text("title", card.title());
          json.text("code", card.code());
          json.text("fingerprint", card.fingerprint());
          json.text("file", file);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  /** The sheet for those who approve, that was written. */
  public static String sheet(String file) {
    return Json.object(json -> json.text("file", file));
  }
}
