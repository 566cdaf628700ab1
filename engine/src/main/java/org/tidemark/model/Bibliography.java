package org.tidemark.model;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.source.Place;

/** The publications that everything else cites. */
public final class Bibliography {
  /**
   * One thing that was published.
   *
   * @param id what others cite, such as {@code PH-01}
   * @param says what it says, in our words
   * @param publication organisation, title, year and section
   * @param year the year, when it is known
   * @param standing whether it was read
   * @param note corrections and limits
   * @param place where it is written
   */
  public record Entry(
      String id,
      String says,
      String publication,
      Optional<String> year,
      Standing standing,
      Optional<String> note,
      Place place) {}

  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final List<String> alerts;

  public Bibliography(Collection<Entry> entries) {
    this(entries, List.of());
  }

  /**
   * With alerts.
   *
   * @param alerts the entries that say what an alert asks of every hospital
   */
  public Bibliography(Collection<Entry> entries, List<String> alerts) {
    entries.forEach(e -> this.entries.put(e.id(), e));
    this.alerts = List.copyOf(alerts);
  }

  /** The entries that say what an alert asks of every hospital. */
  public List<String> alerts() {
    return alerts;
  }

  public Optional<Entry> entry(String id) {
    return Optional.ofNullable(entries.get(id));
  }

  public Collection<Entry> entries() {
    return java.util.Collections.unmodifiableCollection(entries.values());
  }
}
