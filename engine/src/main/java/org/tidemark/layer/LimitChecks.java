package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.model.Condition;
import org.tidemark.model.Counts;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.ListKind;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.PublishedLimits;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * Checks each limit against the measure that it is compared with. A number written in place was
 * checked as it was read; a value knows its measure only here, where a layer above may have changed
 * it.
 */
final class LimitChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  LimitChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    conditions()
        .flatMap(c -> Alternatives.of(policy, c).stream())
        .flatMap(List::stream)
        .forEach(this::check);
    policy
        .bands()
        .forEach(b -> check(Atom.stretch(b.of(), Stretches.of(policy, b.of(), b.band()), false)));
    Counts counts = policy.counts();
    counts.drops().forEach(c -> check(c.list(), c.given()));
    counts.stomachNeeds().forEach(c -> check(c.list(), c.given()));
    counts.repeats().forEach(r -> check("ph-readings", r.tooHigh()));
    counts.moved().forEach(m -> check("lengths", m.given()));
  }

  /** A field of a list is no finding, and is read by a measure of its own. */
  private void check(String name, Condition given) {
    Optional<ListKind> list = policy.vocabulary().list(name);
    for (List<Atom> all : Alternatives.of(policy, given)) {
      for (Atom atom : all) {
        list.flatMap(l -> l.field(atom.finding())).ifPresent(f -> check(atom, f.domain()));
      }
    }
  }

  private Stream<Condition> conditions() {
    Stream<Condition> rules =
        policy.questions().stream().flatMap(q -> q.rules().stream()).map(r -> r.given());
    Stream<Condition> seen =
        policy.care().lapses().stream().flatMap(l -> l.triggers().seen().stream());
    Stream<Condition> after = policy.care().fallbacks().stream().map(f -> f.after());
    Stream<Condition> stated = policy.statements().stream().map(s -> s.given());
    return Stream.of(rules, seen, after, stated).flatMap(s -> s);
  }

  private void check(Atom atom) {
    check(atom, policy.vocabulary().require(atom.finding()).domain());
  }

  private void check(Atom atom, Domain domain) {
    if (domain instanceof Domain.Measure measure && atom.stretch().isPresent()) {
      Atom.Stretch stretch = atom.stretch().get();
      Stream.of(stretch.lower(), stretch.upper())
          .flatMap(Optional::stream)
          .forEach(n -> fits(n, atom.finding(), measure));
      policy
          .vocabulary()
          .finding(atom.finding())
          .flatMap(Finding::published)
          .ifPresent(p -> usual(stretch, atom.finding(), measure, p));
    }
  }

  /** A limit that no publication has may be a slip of the hand; it is for the author to say. */
  private void usual(
      Atom.Stretch stretch, String finding, Domain.Measure measure, PublishedLimits published) {
    Stream.of(stretch.lower(), stretch.upper())
        .flatMap(Optional::stream)
        .filter(n -> n.compareTo(measure.lowest()) > 0 && n.compareTo(measure.highest()) < 0)
        .filter(n -> !published.holds(n))
        .forEach(n -> problems.add(unusual(n, finding, published)));
  }

  private Diagnostic unusual(BigDecimal number, String finding, PublishedLimits published) {
    return Diagnostic.warning(
            DiagnosticCode.UNUSUAL_LIMIT,
            at(number),
            "`"
                + finding
                + "` is compared with "
                + number.toPlainString()
                + "; the limits that were read in publications lie from "
                + published.atLeast().toPlainString()
                + " to "
                + published.atMost().toPlainString())
        .help(
            "check the number; if it is meant, accept this warning and say why (read: "
                + String.join(", ", published.sources())
                + ")");
  }

  private void fits(BigDecimal number, String finding, Domain.Measure measure) {
    if (!measure.inRange(number)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.OUT_OF_RANGE,
                  at(number),
                  "`" + finding + "` is compared with " + number.toPlainString())
              .help(
                  "it goes from "
                      + measure.print(measure.lowest())
                      + " to "
                      + measure.print(measure.highest())
                      + " "
                      + measure.unit()));
    } else if (!measure.onStep(number)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.OFF_STEP,
                  at(number),
                  "`"
                      + finding
                      + "` is compared with "
                      + number.toPlainString()
                      + ", which it cannot show")
              .help(
                  "it is read in steps of "
                      + measure.step().toPlainString()
                      + " "
                      + measure.unit()
                      + "; write a number that it can show"));
    }
  }

  /** The value that holds the number; the number is where it came from. */
  private Span at(BigDecimal number) {
    return policy.values().stream()
        .filter(v -> v.number().filter(n -> n.compareTo(number) == 0).isPresent())
        .map(PolicyValue::place)
        .findFirst()
        .orElseGet(() -> policy.header().place())
        .span();
  }
}
