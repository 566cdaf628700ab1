package org.tidemark.model;

import java.time.LocalDate;
import org.tidemark.source.Place;

/**
 * Who agreed a plan for one patient, and until when it holds. Which patient, it does not say: that
 * stands in the patient's own notes.
 *
 * @param by the role that agreed it, never a person's name
 * @param until its last day
 * @param place where that is written
 */
public record Plan(String by, LocalDate until, Place place) {

  /** Whether its last day lies before the day. */
  public boolean endedBefore(LocalDate today) {
    return until.isBefore(today);
  }
}
