package org.tidemark.trial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;

/** Fills the findings of a worked case up with what they usually are, as far as they then exist. */
final class Completed {
  private final Vocabulary vocabulary;
  private final UsualAnswers usual;

  Completed(Vocabulary vocabulary, UsualAnswers usual) {
    this.vocabulary = vocabulary;
    this.usual = usual;
  }

  /**
   * What is known in a case, and the usual rest of it.
   *
   * @param open what the case leaves open on purpose, as its record speaks of it
   */
  Findings findings(WorkedCase worked, Findings known, Set<String> open) {
    return worked.rest() == Rest.UNKNOWN
        ? known
        : fill(known, worked.place(), open, worked.usual());
  }

  /** The findings and what usually goes with them, said to be entered at the place. */
  Findings fill(Findings stated, Place place) {
    return fill(stated, place, Set.of(), UsualAnswers.NONE);
  }

  private Findings fill(Findings stated, Place place, Set<String> open, UsualAnswers own) {
    Findings filled = stated;
    // In asking order, so that a finding comes after those that it hangs on.
    for (Finding finding : vocabulary.findings()) {
      Optional<Value> value = own.of(finding.name()).or(() -> usual.of(finding.name()));
      if (value.isPresent()
          && !open.contains(finding.name())
          && filled.entry(finding.name()).isEmpty()
          && mayExist(finding, filled)) {
        filled = filled.with(finding.name(), new Findings.Entry(seen(value.get()), place));
      }
    }
    return filled;
  }

  private static boolean mayExist(Finding finding, Findings filled) {
    List<Condition.Options> parents = finding.applies();
    return parents.stream()
        .allMatch(
            p ->
                filled
                    .entry(p.finding())
                    .map(
                        e ->
                            p.options().containsAll(e.seen().options())
                                && e.seen().from().isEmpty())
                    .orElse(false));
  }

  private static Seen seen(Value value) {
    return value instanceof Value.Amount amount
        ? Seen.number(amount.number())
        : Seen.option(((Value.Word) value).name());
  }
}
