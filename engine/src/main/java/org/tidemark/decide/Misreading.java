package org.tidemark.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.HowFar;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;

/**
 * Lets readings count as the stretches that the truth may lie in, where a policy says how far they
 * may be off. A stretch is cut to the measure's range; words in place of a number stay what they
 * are.
 */
final class Misreading {
  /** Readings are taken to be what is so. */
  static final Misreading NONE = new Misreading(Map.of());

  private final Map<String, Off> off;

  /** How far readings of a finding may be off. */
  private record Off(HowFar far) {
    CountsAs said(Seen read) {
      Finding finding = far.finding();
      return new CountsAs(
          finding.name(),
          finding.asks(),
          FindingWords.of(finding, read),
          FindingWords.of(finding, far.counted(read)),
          far.words());
    }
  }

  private Misreading(Map<String, Off> off) {
    this.off = new LinkedHashMap<>(off);
  }

  static Misreading of(EffectivePolicy policy) {
    Map<String, Off> off = new LinkedHashMap<>();
    policy.howFarOff().forEach(far -> off.put(far.finding().name(), new Off(far)));
    return off.isEmpty() ? NONE : new Misreading(off);
  }

  boolean mayBeOff(String finding) {
    return off.containsKey(finding);
  }

  /** How many steps a reading may be off to either side. */
  long ticks(String finding) {
    Off its = off.get(finding);
    return its == null ? 0 : its.far().measure().ticks(its.far().by());
  }

  /** What was entered, as it counts. */
  Findings counted(Findings findings) {
    Findings counted = findings;
    for (Map.Entry<String, Off> each : off.entrySet()) {
      Optional<Findings.Entry> entry = findings.entry(each.getKey());
      if (entry.isPresent() && entry.get().seen().from().isPresent()) {
        Seen wide = each.getValue().far().counted(entry.get().seen());
        counted = counted.with(each.getKey(), new Findings.Entry(wide, entry.get().place()));
      }
    }
    return counted;
  }

  /** Of the findings that a question turns on, the readings that count as more, in words. */
  List<CountsAs> said(Findings findings, CellSpace space) {
    if (off.isEmpty()) {
      return List.of();
    }
    List<CountsAs> all = new ArrayList<>();
    for (Map.Entry<String, Off> each : off.entrySet()) {
      if (space.position(each.getKey()).isPresent()) {
        findings
            .entry(each.getKey())
            .map(Findings.Entry::seen)
            .filter(seen -> seen.from().isPresent())
            .ifPresent(seen -> all.add(each.getValue().said(seen)));
      }
    }
    return all;
  }
}
