package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.tidemark.guide.Found;
import org.tidemark.guide.Hit;
import org.tidemark.source.Diagnostic;

/** What a search of the guidance found, as JSON. */
public final class HitsJson {
  private HitsJson() {}

  public static String of(Found found, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("typed", found.reading().typed());
          json.text("read-as", found.reading().read());
          json.objects(
              "corrections",
              found.reading().corrections(),
              (correction, c) -> {
                correction.text("typed", c.typed());
                correction.text("taken", c.taken());
              });
          json.text("at-this-number", found.atThisNumber());
          json.text("note", found.note());
          json.objects("hits", found.hits(), HitsJson::hit);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void hit(Json json, Hit hit) throws IOException {
    json.text("article", hit.article());
    json.text("title", hit.title());
    json.text("section", Optional.of(hit.section()).filter(s -> !s.isEmpty()));
    json.text("snippet", hit.snippet().text());
    json.objects(
        "marks",
        hit.snippet().marks(),
        (mark, m) -> {
          mark.number("start", m.start());
          mark.number("end", m.end());
        });
    json.flag("act-now", hit.actNow());
    json.flag("pointer", hit.pointer());
    json.text("at-this-number", hit.atThisNumber());
    json.text("policy", hit.policy());
    json.text("edition", hit.edition());
    json.text("origin", hit.origin());
    json.texts("reasons", hit.reasons());
  }
}
