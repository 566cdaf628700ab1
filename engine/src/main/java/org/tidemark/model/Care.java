package org.tidemark.model;

import java.util.List;
import java.util.Map;
import org.tidemark.source.Ordered;

/**
 * What a policy says beside its rules.
 *
 * @param lapses what makes a confirmation lapse
 * @param fallbacks what to do when a check gives nothing or a bad reading
 * @param contacts whom to call
 * @param trays what to gather
 * @param records what to write down
 * @param calls whom to call when a rule of a layer below escalates, by rule
 */
public record Care(
    List<Lapse> lapses,
    List<Fallback> fallbacks,
    List<Contact> contacts,
    List<Tray> trays,
    List<RecordList> records,
    Map<String, String> calls) {
  public Care {
    lapses = List.copyOf(lapses);
    fallbacks = List.copyOf(fallbacks);
    contacts = List.copyOf(contacts);
    trays = List.copyOf(trays);
    records = List.copyOf(records);
    calls = Ordered.map(calls);
  }
}
