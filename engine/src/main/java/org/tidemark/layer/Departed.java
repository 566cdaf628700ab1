package org.tidemark.layer;

import java.time.LocalDate;
import java.util.Optional;
import org.tidemark.model.Days;
import org.tidemark.model.Departure;
import org.tidemark.source.Place;

/**
 * A declared departure and what came of it.
 *
 * @param departure what was declared
 * @param what what is looser, one sentence without its full stop
 * @param below where the layer below, or the vocabulary, has it
 */
public record Departed(Departure departure, String what, Optional<Place> below) {
  /** What is looser, and who decided it: what the reader of any answer must know. */
  public String sentence() {
    return "Departs from "
        + (departure.kind() == Departure.Kind.TEST ? "what counts" : "its floor")
        + ": "
        + what
        + ". "
        + approval();
  }

  /** The same with the reason, and with a warning after its last day. */
  public String caution(LocalDate today) {
    String ended = departure.endedBefore(today) ? " !! It has ended. Do not rely on it." : "";
    return sentence() + " Why: " + departure.why() + ended;
  }

  private String approval() {
    String by = departure.approvedBy().orElse("whom, is not stated");
    String until = departure.until().map(d -> ", until " + Days.of(d)).orElse("");
    return "Approved by " + by + until + ".";
  }
}
