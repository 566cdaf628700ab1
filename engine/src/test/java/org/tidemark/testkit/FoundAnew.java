package org.tidemark.testkit;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** What is left of what was entered when some findings are found anew. */
public final class FoundAnew {
  /** Where findings of tests are said to be entered. */
  public static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());

  private final Vocabulary vocabulary;

  public FoundAnew(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  public boolean renewed(String name) {
    return vocabulary.require(name).renew().isPresent();
  }

  /** What is got anew is no longer known, nor is what hangs on it and can be got anew as well. */
  public Findings stillKnown(Findings findings, Set<String> part) {
    Map<String, Findings.Entry> left = new LinkedHashMap<>(findings.entries());
    for (String name : findings.entries().keySet()) {
      Set<String> above = new HashSet<>();
      above(name, above);
      if (renewed(name) && above.stream().anyMatch(a -> part.contains(a) && renewed(a))) {
        left.remove(name);
      }
    }
    return new Findings(left);
  }

  private void above(String name, Set<String> above) {
    Finding finding = vocabulary.require(name);
    above.add(name);
    finding.applies().stream().map(Condition.Options::finding).forEach(p -> above(p, above));
  }
}
