package org.tidemark.policies;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.ReferenceEvaluator;

/** Cases in which everything is known, drawn from a seed, and how they are told to a table. */
final class KnownCases {
  private static final Place NOWHERE = Place.at(SourceText.of("drawn", "x").beginning());

  private final Vocabulary vocabulary;
  private final UsualAnswers usual;
  private final Random random;
  private final int usualOf10;

  /** Draws mostly what is usual, or else nearly every case would call for help. */
  KnownCases(Vocabulary vocabulary, UsualAnswers usual, long seed, int usualOf10) {
    this.vocabulary = vocabulary;
    this.usual = usual;
    this.random = new Random(seed);
    this.usualOf10 = usualOf10;
  }

  /** A case that what is known leaves open; a finding that is absent does not exist in it. */
  Map<String, Value> draw(Findings known) {
    Map<String, Set<String>> mustBe = new HashMap<>();
    known.entries().forEach((name, entry) -> open(name, entry.seen(), mustBe));
    Map<String, Value> all = new LinkedHashMap<>();
    for (Finding finding : vocabulary.findings()) {
      Optional<Findings.Entry> entry = known.entry(finding.name());
      Optional<Set<String>> must = Optional.ofNullable(mustBe.get(finding.name()));
      List<Value> values =
          ReferenceEvaluator.values(finding, all).stream()
              .filter(v -> entry.map(e -> fits(v, e.seen())).orElse(true))
              .filter(v -> must.map(m -> fits(v, Seen.options(m))).orElse(true))
              .toList();
      if (!values.isEmpty()) {
        all.put(finding.name(), one(finding, values));
      } else if (entry.isPresent()) {
        throw new AssertionError(finding.name() + " is known and cannot be in " + all);
      }
    }
    return all;
  }

  private Value one(Finding finding, List<Value> values) {
    Optional<Value> often = usual.of(finding.name()).filter(values::contains);
    return often.isPresent() && random.nextInt(10) < usualOf10
        ? often.get()
        : values.get(random.nextInt(values.size()));
  }

  /** What was seen exists, and so does all that it hangs on. */
  private void open(String name, Seen seen, Map<String, Set<String>> mustBe) {
    Finding finding = vocabulary.require(name);
    if (finding.whenClosed().map(c -> seen.options().contains(c)).orElse(false)) {
      return;
    }
    for (Condition.Options parent : finding.applies()) {
      mustBe.merge(parent.finding(), parent.options(), KnownCases::both);
      open(parent.finding(), Seen.options(parent.options()), mustBe);
    }
  }

  private static Set<String> both(Set<String> some, Set<String> others) {
    Set<String> both = new LinkedHashSet<>(some);
    both.retainAll(others);
    return both;
  }

  private static boolean fits(Value value, Seen seen) {
    if (value instanceof Value.Amount amount) {
      return seen.from().isPresent()
          && amount.number().compareTo(seen.from().get()) >= 0
          && amount.number().compareTo(seen.to().orElseThrow()) <= 0;
    }
    return seen.options().contains(((Value.Word) value).name());
  }

  /** The case as a bedside would enter it. */
  static Findings findings(Map<String, Value> known) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    known.forEach(
        (name, value) ->
            entries.put(
                name,
                new Findings.Entry(
                    value instanceof Value.Amount amount
                        ? Seen.number(amount.number())
                        : Seen.option(((Value.Word) value).name()),
                    NOWHERE)));
    return new Findings(entries);
  }

  /** The case as the table's description asks for it. */
  Map<String, Object> inputs(Map<String, Value> known) {
    Map<String, Object> inputs = new LinkedHashMap<>();
    for (Finding finding : vocabulary.findings()) {
      String name = finding.name().replace('-', '_');
      Optional<Value> value = Optional.ofNullable(known.get(finding.name()));
      boolean measure = finding.domain() instanceof Domain.Measure;
      inputs.put(
          measure ? "Found_" + name : name, value.map(KnownCases::word).orElse("does-not-apply"));
      if (measure) {
        inputs.put(
            name,
            value
                .filter(v -> v instanceof Value.Amount)
                .map(v -> ((Value.Amount) v).number())
                .orElse(null));
      }
    }
    return inputs;
  }

  private static String word(Value value) {
    return value instanceof Value.Word word ? word.name() : "measured";
  }
}
