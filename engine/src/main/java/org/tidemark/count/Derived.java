package org.tidemark.count;

import java.util.List;
import java.util.Set;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.model.Findings;
import org.tidemark.source.Ordered;

/**
 * What a tube's record comes to.
 *
 * @param findings what was entered, and what the record yields
 * @param speaksOf the findings that the record settles or leaves open
 * @param notCounted what stands in the record and does not count, and why
 * @param due until when the last check stands, and what nobody watches for
 */
public record Derived(
    Findings findings, Set<String> speaksOf, List<DoesNotCount> notCounted, List<String> due) {
  public Derived {
    speaksOf = Ordered.set(speaksOf);
    notCounted = List.copyOf(notCounted);
    due = List.copyOf(due);
  }

  /** Findings without a record. */
  public static Derived of(Findings findings) {
    return new Derived(findings, Set.of(), List.of(), List.of());
  }
}
