package org.tidemark.model;

import java.util.List;

/**
 * What a policy declares about itself, beside what it decides.
 *
 * @param statements what it says is always or never so
 * @param departures in what it is looser than it might be
 */
public record Declared(List<Statement> statements, List<Departure> departures) {
  public static final Declared NOTHING = new Declared(List.of(), List.of());

  public Declared {
    statements = List.copyOf(statements);
    departures = List.copyOf(departures);
  }
}
