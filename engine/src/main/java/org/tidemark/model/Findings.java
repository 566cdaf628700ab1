package org.tidemark.model;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * What is known about one patient and one tube at one moment. A finding that is not here is not
 * known: it may be anything.
 *
 * @param entries what is known, by finding
 */
public record Findings(Map<String, Entry> entries) {
  public static final Findings NONE = new Findings(Map.of());

  public Findings {
    entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
  }

  /**
   * What is known of one finding.
   *
   * @param seen the values that it may have
   * @param place where that was entered
   */
  public record Entry(Seen seen, Place place) {}

  public Optional<Entry> entry(String finding) {
    return Optional.ofNullable(entries.get(finding));
  }

  /** The same, and one finding more, or again. */
  public Findings with(String finding, Entry entry) {
    Map<String, Entry> more = new LinkedHashMap<>(entries);
    more.put(finding, entry);
    return new Findings(more);
  }

  /** The same without one finding. */
  public Findings without(String finding) {
    Map<String, Entry> fewer = new LinkedHashMap<>(entries);
    fewer.remove(finding);
    return new Findings(fewer);
  }
}
