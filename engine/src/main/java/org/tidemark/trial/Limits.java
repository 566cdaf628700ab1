package org.tidemark.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Rule;
import org.tidemark.model.Seen;
import org.tidemark.source.Place;

/**
 * The numbers that a question's rules, and the policy's bands of the measures that they look at,
 * compare a measure with. A slip between "at most" and "below" shows at such a number or one step
 * beside it, and nowhere else; or as far from it as a reading may be off.
 */
final class Limits {
  private final CompiledQuestion compiled;
  private final EffectivePolicy policy;
  private final Map<String, TreeMap<BigDecimal, List<Comparison>>> limits = new TreeMap<>();

  /** Something that compares a measure with a number. */
  private record Comparison(String by, Place place) {}

  Limits(CompiledQuestion compiled) {
    this.compiled = compiled;
    this.policy = compiled.policy();
    boolean alone = compiled.question().after().isEmpty();
    policy.bands().stream()
        .filter(b -> alone ? compiled.space().position(b.of()).isPresent() : ownMeasure(b.of()))
        .forEach(this::band);
    if (alone) {
      compiled.rules().forEach(r -> rule(r.rule()));
    } else {
      compiled.question().own().forEach(this::rule);
    }
  }

  /** What the question that it comes after looks at has its cases there. */
  private boolean ownMeasure(String finding) {
    return compiled.question().own().stream()
        .flatMap(r -> Alternatives.of(policy, r.given()).stream())
        .flatMap(List::stream)
        .anyMatch(a -> a.finding().equals(finding));
  }

  private void band(NamedBand band) {
    Condition in = new Condition.InNamedBand(band.of(), band.name());
    compared(in, new Comparison("band `" + band.name() + "`", band.place()));
  }

  private void rule(Rule rule) {
    Comparison by = new Comparison("rule `" + rule.name() + "`", rule.place());
    compared(rule.given(), by);
  }

  private void compared(Condition condition, Comparison by) {
    for (List<Atom> all : Alternatives.of(policy, condition)) {
      all.forEach(
          atom ->
              atom.stretch()
                  .filter(Atom.Stretch::stated)
                  .ifPresent(s -> ends(s).forEach(number -> add(atom.finding(), number, by))));
    }
  }

  private static Stream<BigDecimal> ends(Atom.Stretch stretch) {
    return Stream.of(stretch.lower(), stretch.upper()).flatMap(Optional::stream);
  }

  private void add(String finding, BigDecimal number, Comparison by) {
    List<Comparison> there =
        limits
            .computeIfAbsent(finding, f -> new TreeMap<>())
            .computeIfAbsent(number, n -> new ArrayList<>());
    if (!there.contains(by)) {
      there.add(by);
    }
  }

  /** Every limit and its two neighbours, as far as the measure can show them. */
  List<Coverage.ReadingCover> readings(List<TrialResult> results) {
    List<Coverage.ReadingCover> all = new ArrayList<>();
    for (Finding finding : policy.vocabulary().findings()) {
      if (finding.domain() instanceof Domain.Measure measure) {
        near(finding, measure)
            .forEach((ticks, by) -> all.add(cover(finding, measure, ticks, by, results)));
      }
    }
    return all;
  }

  /** The readings at and beside each limit of a measure; true for the limits themselves. */
  SortedMap<BigDecimal, Boolean> of(Finding finding, Domain.Measure measure) {
    Set<BigDecimal> named = limits.getOrDefault(finding.name(), new TreeMap<>()).keySet();
    SortedMap<BigDecimal, Boolean> readings = new TreeMap<>();
    near(finding, measure)
        .keySet()
        .forEach(
            ticks -> readings.put(measure.number(ticks), named.contains(measure.number(ticks))));
    return readings;
  }

  private Map<Long, List<Comparison>> near(Finding finding, Domain.Measure measure) {
    Map<Long, List<Comparison>> near = new TreeMap<>();
    long off = policy.howFarOff(finding.name()).map(measure::ticks).orElse(0L);
    limits
        .getOrDefault(finding.name(), new TreeMap<>())
        .forEach(
            (number, by) -> {
              long at = measure.ticks(number);
              LongStream.of(at, at - off, at + off)
                  .flatMap(ticks -> LongStream.rangeClosed(ticks - 1, ticks + 1))
                  .distinct()
                  .filter(ticks -> measure.inRange(measure.number(ticks)))
                  .forEach(t -> near.computeIfAbsent(t, none -> new ArrayList<>()).addAll(by));
            });
    return near;
  }

  private Coverage.ReadingCover cover(
      Finding finding,
      Domain.Measure measure,
      long ticks,
      List<Comparison> by,
      List<TrialResult> results) {
    BigDecimal number = measure.number(ticks);
    return new Coverage.ReadingCover(
        compiled.question().name(),
        finding.name(),
        measure.print(number),
        by.stream().map(Comparison::by).distinct().toList(),
        results.stream().anyMatch(r -> states(r.worked(), finding.name(), number)),
        by.get(0).place());
  }

  private static boolean states(WorkedCase worked, String finding, BigDecimal number) {
    return worked.findings().entry(finding).map(e -> isExactly(e.seen(), number)).orElse(false);
  }

  private static boolean isExactly(Seen seen, BigDecimal number) {
    return seen.options().isEmpty()
        && seen.from().filter(n -> n.compareTo(number) == 0).isPresent()
        && seen.to().filter(n -> n.compareTo(number) == 0).isPresent();
  }
}
