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

  Forcing(Means means) {
    this.means = means;
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
    return smallest.put(found.map(chosen -> observations(findings, names, chosen)));
  }

  private List<Observation> observations(Findings findings, List<String> names, BitSet chosen) {
    Vocabulary vocabulary = means.compiled().policy().vocabulary();
    return chosen.stream()
        .mapToObj(i -> observation(vocabulary.require(names.get(i)), findings))
        .toList();
  }

  private static Observation observation(Finding finding, Findings findings) {
    Seen seen = findings.entry(finding.name()).orElseThrow().seen();
    return new Observation(
        finding.name(), finding.asks(), seen, FindingWords.of(finding, seen), Optional.empty());
  }
}
