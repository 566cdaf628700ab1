package org.tidemark.report;

import java.util.Optional;
import org.tidemark.model.Bibliography;

/** Citations, and the publications behind them when the bibliography is at hand. */
final class Sources {
  private final Optional<Bibliography> bibliography;

  Sources(Optional<Bibliography> bibliography) {
    this.bibliography = bibliography;
  }

  Optional<String> publication(String id) {
    return bibliography.flatMap(b -> b.entry(id)).map(Bibliography.Entry::publication);
  }
}
