package org.tidemark.decide;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.model.Vocabulary;

/** The smallest part of what was entered that forces an outcome, whatever everything else is. */
final class Forcing {
  private final Means means;
  private final Findings entered;

  /**
   * Looks among some findings.
   *
   * @param means what it works with
   * @param entered the findings as they were entered, which may count as more
   */
  Forcing(Means means, Findings entered) {
    this.means = means;
    this.entered = entered;
  }

  Least of(Findings findings, Outcome outcome) {
    List<String> names =
        means.compiled().policy().vocabulary().findings().stream()
            .map(Finding::name)
            .filter(n -> findings.entry(n).isPresent())
            .toList();
    List<Taking> takings = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      takings.add(new Taking(i, Kept.box(means.space(), findings, names.get(i))));
    }
    Smallest smallest =
        new Smallest(
            means, new Contrary(means, outcome), means.space().everything(), List.of(), takings);
    Optional<BitSet> found = smallest.find();
    return smallest.put(found.map(chosen -> observations(names, chosen)));
  }

  private List<Observation> observations(List<String> names, BitSet chosen) {
    Vocabulary vocabulary = means.compiled().policy().vocabulary();
    return chosen.stream().mapToObj(i -> observation(vocabulary.require(names.get(i)))).toList();
  }

  private Observation observation(Finding finding) {
    Seen seen = entered.entry(finding.name()).orElseThrow().seen();
    return new Observation(
        finding.name(),
        finding.asks(),
        finding.called(),
        seen,
        FindingWords.of(finding, seen),
        Optional.empty());
  }
}
