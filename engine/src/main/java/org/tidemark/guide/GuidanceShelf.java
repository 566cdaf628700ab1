package org.tidemark.guide;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;

/**
 * Holds the last search that was good. A broken article or word never takes a working search away;
 * the problems are there for whoever keeps the files.
 */
public final class GuidanceShelf {
  /** A search that works, if there ever was one, and what the latest offer said. */
  private record State(Optional<GuidanceSearch> search, List<Diagnostic> latest, boolean stale) {}

  private volatile State state = new State(Optional.empty(), List.of(), false);

  /** Takes a new one when it is good; keeps the old one when it is not. */
  public synchronized void offer(Loaded<GuidanceSearch> next) {
    Optional<GuidanceSearch> before = state.search();
    state =
        next.match(
            good -> new State(Optional.of(good), next.diagnostics(), false),
            errors -> new State(before, errors, true));
  }

  /** The last good one. */
  public Optional<GuidanceSearch> search() {
    return state.search();
  }

  /** What there is to say about the latest offer. */
  public List<Diagnostic> diagnostics() {
    return state.latest();
  }

  /** Whether the latest offer was broken, so that the index is older than the files. */
  public boolean stale() {
    return state.stale();
  }
}
