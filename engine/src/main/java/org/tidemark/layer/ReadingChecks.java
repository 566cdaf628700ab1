package org.tidemark.layer;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Fallback;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.model.Worse;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * Looks at each measure on which a question can allow, reading by reading: is every reading spoken
 * of, is none both inside and outside what passes, does every failing one get its repeat, and does
 * the passing side lie on the safer side?
 */
final class ReadingChecks {
  private final EffectivePolicy policy;
  private final EffectiveQuestion question;
  private final Problems problems;

  /** The ways of each condition, found once: every rule is held against every other. */
  private final IdentityHashMap<Condition, List<List<Atom>>> ways = new IdentityHashMap<>();

  ReadingChecks(EffectivePolicy policy, EffectiveQuestion question, Problems problems) {
    this.policy = policy;
    this.question = question;
    this.problems = problems;
  }

  void check() {
    Set<String> measures = new LinkedHashSet<>();
    question
        .rules(Effect.ALLOW)
        .forEach(
            r ->
                atoms(r.given()).stream()
                    .filter(a -> a.stretch().isPresent())
                    .forEach(a -> measures.add(a.finding())));
    measures.forEach(this::measure);
  }

  private List<List<Atom>> ways(Condition condition) {
    return ways.computeIfAbsent(condition, c -> Alternatives.of(policy, c));
  }

  private List<Atom> atoms(Condition condition) {
    List<Atom> all = new ArrayList<>();
    ways(condition).forEach(all::addAll);
    return all;
  }

  private void measure(String name) {
    Finding finding = policy.vocabulary().require(name);
    Readings readings = new Readings((Domain.Measure) finding.domain());
    BitSet passes =
        union(readings, name, question.rules(Effect.ALLOW).stream().map(Rule::given).toList());
    BitSet open = declaredOpen(readings, name);
    if (passes.isEmpty()) {
      return;
    }
    gap(finding, readings, passes, open);
    overlap(finding, readings);
    repeat(finding, readings, passes, open);
    direction(finding, readings, passes);
  }

  private BitSet union(Readings readings, String name, List<Condition> conditions) {
    BitSet union = new BitSet();
    for (Condition condition : conditions) {
      atoms(condition).stream()
          .filter(a -> a.finding().equals(name))
          .forEach(a -> union.or(readings.of(a)));
    }
    return union;
  }

  /** What the policy itself says it leaves open. */
  private BitSet declaredOpen(Readings readings, String name) {
    BitSet open = new BitSet();
    policy.bands().stream()
        .filter(b -> b.of().equals(name) && b.notStated().isPresent())
        .forEach(
            b ->
                open.or(
                    readings.of(Atom.stretch(name, Stretches.of(policy, name, b.band()), false))));
    return open;
  }

  private void gap(Finding finding, Readings readings, BitSet passes, BitSet open) {
    List<Condition> spoken = new ArrayList<>(question.rules().stream().map(Rule::given).toList());
    policy.care().fallbacks().forEach(f -> spoken.add(f.after()));
    BitSet silent = readings.all();
    silent.andNot(passes);
    silent.andNot(union(readings, finding.name(), spoken));
    BitSet known = (BitSet) silent.clone();
    known.and(open);
    silent.andNot(open);
    if (!silent.isEmpty()) {
      report(
          DiagnosticCode.GAP,
          at(finding),
          message(finding, readings, silent, "is spoken of by no rule, and does not pass"),
          "widen a band, add a rule, or declare the gap with a band that has `not-stated`");
    }
    if (!known.isEmpty()) {
      problems.add(
          Diagnostic.notice(
              DiagnosticCode.GAP,
              openBand(finding, readings, known),
              message(finding, readings, known, "is left open by the policy; the answer is hold")));
    }
  }

  private void overlap(Finding finding, Readings readings) {
    List<Passing> passing =
        question.rules(Effect.ALLOW).stream()
            .flatMap(r -> ways(r.given()).stream())
            .filter(way -> speaksOf(way, finding))
            .map(way -> new Passing(way, readingsOf(finding, readings, way)))
            .distinct()
            .toList();
    for (Fallback fallback : policy.care().fallbacks()) {
      BitSet clash = clash(finding, readings, passing, fallback.after());
      overlap(finding, readings, clash, fallback.place().span(), "`" + fallback.name() + "`");
    }
    for (Rule rule : question.rules()) {
      if (rule.effect() == Effect.HOLD || rule.effect() == Effect.ESCALATE) {
        BitSet clash = clash(finding, readings, passing, rule.given());
        overlap(finding, readings, clash, rule.place().span(), "the rule `" + rule.name() + "`");
      }
    }
  }

  private void overlap(Finding finding, Readings readings, BitSet clash, Span at, String what) {
    if (!clash.isEmpty()) {
      report(
          DiagnosticCode.OVERLAP,
          at,
          message(finding, readings, clash, "passes, and also fails by " + what),
          "move one end, or make it inclusive on one side only");
    }
  }

  /** A way to proceed that speaks of a measure, and the readings of it that pass. */
  private record Passing(List<Atom> way, BitSet readings) {}

  /** A way that rests on other evidence, such as a film, passes no reading of this measure. */
  private static boolean speaksOf(List<Atom> way, Finding finding) {
    return way.stream().anyMatch(a -> a.finding().equals(finding.name()));
  }

  /**
   * The readings that pass one way and fail another way that asks for nothing more. Where all
   * readings of the way fail, it is no slip at an end but an exception with conditions of its own,
   * and the ordinary precedence of the outcomes settles it.
   */
  private BitSet clash(Finding finding, Readings readings, List<Passing> passing, Condition fails) {
    BitSet clash = new BitSet();
    for (List<Atom> way : ways(fails).stream().distinct().toList()) {
      List<Passing> same = passing.stream().filter(p -> asksNoMore(way, p, finding)).toList();
      BitSet failing = same.isEmpty() ? new BitSet() : readingsOf(finding, readings, way);
      for (Passing each : same) {
        BitSet both = (BitSet) each.readings.clone();
        both.and(failing);
        if (!both.equals(each.readings)) {
          clash.or(both);
        }
      }
    }
    return clash;
  }

  private static boolean asksNoMore(List<Atom> fails, Passing passing, Finding finding) {
    return fails.stream()
        .allMatch(
            f ->
                f.finding().equals(finding.name())
                    || passing.way.stream().anyMatch(w -> implies(w, f)));
  }

  private static boolean implies(Atom narrow, Atom wide) {
    return narrow.finding().equals(wide.finding())
        && narrow.stretch().equals(wide.stretch())
        && !narrow.negated()
        && !wide.negated()
        && wide.options().containsAll(narrow.options());
  }

  private static BitSet readingsOf(Finding finding, Readings readings, List<Atom> atoms) {
    BitSet in = readings.all();
    atoms.stream()
        .filter(a -> a.finding().equals(finding.name()))
        .forEach(a -> in.and(readings.of(a)));
    return in;
  }

  private void repeat(Finding finding, Readings readings, BitSet passes, BitSet open) {
    Optional<Fallback> retest =
        policy.care().fallbacks().stream().filter(f -> f.name().equals("retest")).findFirst();
    if (retest.isEmpty()) {
      return;
    }
    BitSet repeated = union(readings, finding.name(), List.of(retest.get().after()));
    if (repeated.isEmpty()) {
      return;
    }
    BitSet left =
        union(readings, finding.name(), question.rules().stream().map(Rule::given).toList());
    left.andNot(passes);
    left.andNot(repeated);
    left.andNot(open);
    if (!left.isEmpty()) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.FAILS_WITHOUT_REPEAT,
                  retest.get().place().span(),
                  message(finding, readings, left, "fails, and no repeat is stated for it"))
              .help("let `after` of the retest take in every reading that fails"));
    }
  }

  private void direction(Finding finding, Readings readings, BitSet passes) {
    int last = readings.count() - 1;
    boolean higherWrong = finding.worse() instanceof Worse.Higher && passes.get(last);
    boolean lowerWrong = finding.worse() instanceof Worse.Lower && passes.get(0);
    if (higherWrong || lowerWrong) {
      report(
          DiagnosticCode.REVERSED_DIRECTION,
          at(finding),
          "`"
              + finding.name()
              + "` passes at "
              + readings.words(passes)
              + ", which takes in its most worrying reading",
          "the comparison may be turned round: for a measure that is safer when lower, give the passing band an upper end");
    }
  }

  private String message(Finding finding, Readings readings, BitSet which, String what) {
    return "`" + finding.name() + "` " + readings.words(which) + " " + what;
  }

  private Span at(Finding finding) {
    return question.rules(Effect.ALLOW).stream()
        .filter(r -> atoms(r.given()).stream().anyMatch(a -> a.finding().equals(finding.name())))
        .findFirst()
        .map(r -> r.place().span())
        .orElseGet(() -> policy.header().place().span());
  }

  private Span openBand(Finding finding, Readings readings, BitSet known) {
    for (NamedBand band : policy.bands()) {
      boolean open = band.of().equals(finding.name()) && band.notStated().isPresent();
      if (open
          && readings
              .of(
                  Atom.stretch(
                      finding.name(), Stretches.of(policy, finding.name(), band.band()), false))
              .intersects(known)) {
        return band.place().span();
      }
    }
    return at(finding);
  }

  /** Of somebody's published page we report what we find; a policy of our own must not have it. */
  private void report(DiagnosticCode code, Span at, String message, String help) {
    boolean published = policy.header().kind() == PolicyKind.PUBLISHED;
    problems.add(
        (published ? Diagnostic.warning(code, at, message) : Diagnostic.error(code, at, message))
            .help(help));
  }
}
