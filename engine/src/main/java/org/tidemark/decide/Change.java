package org.tidemark.decide;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Vocabulary;

/**
 * For a hold: the fewest findings that would have to be found, or found anew, for it to proceed for
 * certain.
 *
 * <p>What nobody has looked at may turn out to be anything. What was entered may come out otherwise
 * only when the vocabulary says how it is got anew; what is a fact of the patient stays. When
 * something is got anew, what hangs on it and can be got anew as well is no longer known: a fresh
 * sample has no reading yet. A reading that may be off may be read again, and then shows something
 * that the first reading left possible.
 */
final class Change {
  private final Means means;
  private final CellSpace space;
  private final Vocabulary vocabulary;

  Change(Means means) {
    this.means = means;
    this.space = means.space();
    this.vocabulary = means.compiled().policy().vocabulary();
  }

  Least toProceed(Findings findings) {
    List<Kept> kept =
        findings.entries().keySet().stream().map(name -> kept(findings, name)).toList();
    return new Bringing(means, Outcome.PROCEED, space.everything(), kept, may(findings))
        .fewest(f -> findings.entry(f.name()).isPresent());
  }

  private Kept kept(Findings findings, String name) {
    BitSet until = new BitSet();
    Finding finding = vocabulary.require(name);
    if (means.misreading().mayBeOff(name)) {
      space.position(name).ifPresent(until::set);
    }
    if (finding.renew().isPresent()) {
      Set<String> above = new HashSet<>(Set.of(name));
      hangsOn(finding, above);
      for (int i = 0; i < space.size(); i++) {
        Finding other = space.cells(i).finding();
        if (other.renew().isPresent() && above.contains(other.name())) {
          until.set(i);
        }
      }
    }
    return new Kept(Kept.box(space, findings, name), until);
  }

  private void hangsOn(Finding finding, Set<String> above) {
    for (Condition.Options parent : finding.applies()) {
      if (above.add(parent.finding())) {
        hangsOn(vocabulary.require(parent.finding()), above);
      }
    }
  }

  private long[] may(Findings findings) {
    long[] may = space.everything();
    for (int i = 0; i < may.length; i++) {
      Finding finding = space.cells(i).finding();
      if (finding.renew().isEmpty()) {
        int position = i;
        findings
            .entry(finding.name())
            .ifPresent(e -> may[position] = space.cells(position).in(e.seen()));
      }
    }
    return may;
  }
}
