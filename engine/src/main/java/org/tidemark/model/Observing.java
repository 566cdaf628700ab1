package org.tidemark.model;

import java.util.List;

/**
 * What a policy says about how things are seen.
 *
 * @param own findings that only this policy asks for
 * @param off how far readings may be off
 * @param counts which items of lists count
 */
public record Observing(List<Finding> own, List<ReaderError> off, Counts counts) {
  public static final Observing NOTHING = new Observing(List.of(), List.of(), Counts.NONE);

  public Observing {
    own = List.copyOf(own);
    off = List.copyOf(off);
  }
}
