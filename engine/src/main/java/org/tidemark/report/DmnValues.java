package org.tidemark.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.layer.Atom;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;

/**
 * The values of one finding that satisfy a condition, each named: a test that names what it lets
 * through is never passed by an input that is missing, as one that names what it shuts out would
 * be.
 *
 * @param words the words, in the order of the finding's options
 * @param numbers the stretches of numbers
 */
record DmnValues(Set<String> words, List<DmnInterval> numbers) {

  /** What satisfies one comparison. A negation takes in recorded, applicable values only. */
  static DmnValues of(Finding finding, Atom atom) {
    Set<String> words = new LinkedHashSet<>();
    finding.domain().options().stream()
        .filter(o -> holds(atom, o))
        .forEach(o -> words.add(o.name()));
    return new DmnValues(words, numbers(finding.domain(), atom));
  }

  private static boolean holds(Atom atom, Option option) {
    return atom.negated()
        ? !option.nothingRecorded() && !atom.options().contains(option.name())
        : atom.options().contains(option.name());
  }

  private static List<DmnInterval> numbers(Domain domain, Atom atom) {
    if (domain instanceof Domain.Measure measure) {
      return atom.stretch()
          .map(s -> DmnInterval.of(measure, s, atom.negated()))
          .orElseGet(
              () -> atom.negated() ? List.of(DmnInterval.all(measure)) : List.<DmnInterval>of());
    }
    return List.of();
  }

  /** What satisfies both conditions. */
  DmnValues and(DmnValues other) {
    Set<String> both = new LinkedHashSet<>(words);
    both.retainAll(other.words);
    List<DmnInterval> overlaps = new ArrayList<>();
    for (DmnInterval one : numbers) {
      other.numbers.forEach(two -> one.and(two).ifPresent(overlaps::add));
    }
    return new DmnValues(both, overlaps);
  }

  String wordTest() {
    return DmnNames.quoted(words);
  }

  String numberTest() {
    return numbers.stream().map(DmnInterval::toString).collect(Collectors.joining(", "));
  }
}
