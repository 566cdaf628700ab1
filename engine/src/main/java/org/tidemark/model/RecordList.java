package org.tidemark.model;

import java.util.List;
import org.tidemark.source.Place;

/**
 * What must be written down on one occasion.
 *
 * @param name the occasion, such as {@code at-check}
 * @param fields what to write
 * @param backing how well it is backed
 * @param place where it is written
 */
public record RecordList(String name, List<String> fields, Rule.Backing backing, Place place) {
  public RecordList {
    fields = List.copyOf(fields);
  }
}
