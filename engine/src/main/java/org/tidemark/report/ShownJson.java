package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Header;
import org.tidemark.print.Shown;
import org.tidemark.source.Diagnostic;

/** A policy as it holds, with what each layer says, as JSON. */
public final class ShownJson {
  private ShownJson() {}

  public static String of(EffectivePolicy policy, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("policy", policy.name());
          json.number("edition", policy.header().edition());
          json.objects("layers", policy.layers(), ShownJson::layer);
          json.objects("items", Shown.of(policy), ShownJson::entry);
          json.objects("departures", policy.departed(), DepartedJson::departed);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void layer(Json json, Header header) throws IOException {
    json.text("name", header.name());
    json.number("edition", header.edition());
    json.text("kind", header.kind().word());
  }

  private static void entry(Json json, Shown.Entry entry) throws IOException {
    json.text("kind", entry.kind());
    json.text("name", entry.name());
    json.text("holds", entry.holds());
    json.objects("says", entry.says(), ShownJson::say);
  }

  private static void say(Json json, Shown.Say say) throws IOException {
    json.text("layer", say.layer());
    json.text("where", say.where());
    json.text("text", say.text());
  }
}
