package org.tidemark.count;

import java.util.Optional;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/** Findings together with those that follow from a sweep that found nothing. */
final class Closed {
  private static final Place NOWHERE = Place.at(new Span(SourceText.of("findings", " "), 0, 1));

  private final Vocabulary vocabulary;

  Closed(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** As an item, so that a condition can be tried on it. */
  TubeRecord.Item item(Findings entered) {
    Findings all = entered;
    for (Finding finding : vocabulary.findings()) {
      Optional<String> closed = finding.whenClosed();
      Findings known = all;
      boolean shut = finding.applies().stream().anyMatch(p -> surelyNot(p, known));
      if (closed.isPresent() && shut && all.entry(finding.name()).isEmpty()) {
        all = all.with(finding.name(), new Findings.Entry(Seen.option(closed.get()), NOWHERE));
      }
    }
    return new TubeRecord.Item(Optional.empty(), all, NOWHERE);
  }

  private static boolean surelyNot(Condition.Options parent, Findings known) {
    return known
        .entry(parent.finding())
        .map(Findings.Entry::seen)
        .filter(
            s -> s.from().isEmpty() && s.options().stream().noneMatch(parent.options()::contains))
        .isPresent();
  }
}
