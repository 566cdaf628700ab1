package org.tidemark.model;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The findings that policies speak of, in asking order. */
public final class Vocabulary {
  private final String name;
  private final int edition;
  private final Map<String, Finding> findings;
  private final List<ListKind> lists;
  private final List<EventKind> events;

  public Vocabulary(String name, int edition, Collection<Finding> findings) {
    this(name, edition, findings, List.of(), List.of());
  }

  public Vocabulary(
      String name,
      int edition,
      Collection<Finding> findings,
      List<ListKind> lists,
      List<EventKind> events) {
    this.name = name;
    this.edition = edition;
    this.lists = List.copyOf(lists);
    this.events = List.copyOf(events);
    this.findings = new LinkedHashMap<>();
    findings.stream()
        .sorted(Comparator.comparing(Finding::askingOrder).thenComparing(Finding::name))
        .forEach(f -> this.findings.put(f.name(), f));
  }

  /** The same with more findings; one of a name that is there already stays as it is. */
  public Vocabulary with(Collection<Finding> more) {
    Map<String, Finding> all = new LinkedHashMap<>(findings);
    more.forEach(f -> all.putIfAbsent(f.name(), f));
    return new Vocabulary(name, edition, all.values(), lists, events);
  }

  /** Whether each name that both have means the same to both. */
  public boolean agreesWith(Vocabulary other) {
    return findings.values().stream()
        .allMatch(f -> other.finding(f.name()).map(f::meansTheSame).orElse(true));
  }

  public String name() {
    return name;
  }

  public int edition() {
    return edition;
  }

  public Optional<Finding> finding(String wanted) {
    return Optional.ofNullable(findings.get(wanted));
  }

  /** The finding of that name; the name must be one that was checked before. */
  public Finding require(String wanted) {
    return finding(wanted)
        .orElseThrow(() -> new IllegalArgumentException("no finding is called " + wanted));
  }

  /** What comes more than once in a tube's record. */
  public List<ListKind> lists() {
    return lists;
  }

  /** One of those lists, if there is one of that name. */
  public Optional<ListKind> list(String wanted) {
    return lists.stream().filter(l -> l.name().equals(wanted)).findFirst();
  }

  /** What can happen in a tube's record. */
  public List<EventKind> events() {
    return events;
  }

  /** The kind of event of that name. */
  public Optional<EventKind> event(String wanted) {
    return events.stream().filter(e -> e.name().equals(wanted)).findFirst();
  }

  /** All findings, in asking order. */
  public List<Finding> findings() {
    return List.copyOf(findings.values());
  }

  public List<String> names() {
    return List.copyOf(findings.keySet());
  }
}
