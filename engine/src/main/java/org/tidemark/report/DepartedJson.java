package org.tidemark.report;

import java.io.IOException;
import java.time.LocalDate;
import org.tidemark.layer.Departed;
import org.tidemark.model.Departure;
import org.tidemark.source.Place;

/** A declared departure as JSON, with both places. */
final class DepartedJson {
  private DepartedJson() {}

  static void departed(Json json, Departed one) throws IOException {
    Departure departure = one.departure();
    json.text("in", departure.kind().word());
    json.text("name", departure.name());
    json.text("rule", departure.rule());
    json.text("what", one.what());
    json.text("why", departure.why());
    json.text("approved-by", departure.approvedBy());
    json.text("until", departure.until().map(LocalDate::toString));
    json.text("layer", departure.layer());
    json.text("here", departure.place().toString());
    json.text("below", one.below().map(Place::toString));
    json.texts("sources", departure.sources());
  }
}
