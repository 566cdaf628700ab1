package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Need;
import org.tidemark.decide.Routes;
import org.tidemark.decide.ToAsk;
import org.tidemark.decide.Way;

/** How an unfinished case can be settled, as JSON. */
final class RoutesJson {
  private RoutesJson() {}

  /** Without the request for it, the fields are there all the same. */
  static void write(Json json, Optional<Routes> routes) throws IOException {
    json.object(
        "to-settle",
        object -> {
          object.text("is", routes.map(RoutesJson::is).orElse("not-asked"));
          object.objects(
              "findings",
              routes.map(RoutesJson::needs).orElse(List.of()),
              (each, need) -> DecisionJson.need(each, need));
        });
    json.objects("ways", routes.map(Routes::ways).orElse(List.of()), RoutesJson::way);
  }

  private static String is(Routes routes) {
    if (routes.fewest() instanceof ToAsk.Found) {
      return "found";
    }
    return routes.fewest() instanceof ToAsk.NoneExists ? "none" : "not-worked-out";
  }

  private static List<Need> needs(Routes routes) {
    return routes.fewest() instanceof ToAsk.Found found ? found.needs() : List.of();
  }

  private static void way(Json json, Way way) throws IOException {
    json.text("outcome", way.outcome().word());
    json.text("word", way.word());
    LeastJson.write(json, "by", Optional.of(way.fewest()));
  }
}
