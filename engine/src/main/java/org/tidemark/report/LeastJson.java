package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Least;
import org.tidemark.decide.Observation;

/** A smallest set of findings as JSON. */
final class LeastJson {
  private LeastJson() {}

  /** Nothing is given where the question does not arise; the field is there all the same. */
  static void write(Json json, String name, Optional<Least> least) throws IOException {
    json.object(
        name,
        object -> {
          object.text("is", least.map(LeastJson::is).orElse("not-asked"));
          object.objects(
              "findings", least.map(LeastJson::findings).orElse(List.of()), LeastJson::one);
        });
  }

  private static String is(Least least) {
    if (least instanceof Least.Found) {
      return "found";
    }
    return least instanceof Least.NoneExists ? "none" : "not-worked-out";
  }

  private static List<Observation> findings(Least least) {
    return least instanceof Least.Found found ? found.findings() : List.of();
  }

  private static void one(Json json, Observation each) throws IOException {
    json.text("finding", each.finding());
    json.text("asks", each.asks());
    json.text("found", each.found());
    json.texts("options", each.seen().options());
    json.text("lowest", each.seen().from().map(n -> n.toPlainString()));
    json.text("highest", each.seen().to().map(n -> n.toPlainString()));
    json.text("got-anew-by", each.renew());
  }
}
