package org.tidemark.prove;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.decide.CellSpace;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** Replays a case through the ordinary evaluator and says it in bedside words. */
final class Bedside {
  private static final Place FOUND =
      Place.at(SourceText.of("found by the prover", "case").beginning());

  /** Answers do not depend on the day; only a caution does, and no claim is about that. */
  private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

  private final EffectivePolicy policy;
  private final Decider decider;
  private final CellSpace space;

  Bedside(EffectivePolicy policy, String question, CellSpace space) {
    this.policy = policy;
    this.decider = Decider.of(policy, question).orElseThrow();
    this.space = space;
  }

  Findings findings(long[] point) {
    return space.findings(point, FOUND);
  }

  Decision replay(long[] point) {
    return decider.decide(findings(point), ANY_DAY);
  }

  /** What is answered when nothing at all is known. */
  Decision answerToNothing() {
    return decider.decide(Findings.NONE, ANY_DAY);
  }

  /**
   * Replays a case that the prover says comes to one of these outcomes. A case that does not is a
   * fault of the prover, and is never passed on as a finding about the policy.
   */
  Decision replay(long[] point, Set<Outcome> expected) {
    Decision decision = replay(point);
    if (!expected.contains(decision.outcome())) {
      throw new IllegalStateException(
          "the prover expected "
              + expected
              + " and the evaluator answers "
              + decision.outcome()
              + " to "
              + words(point));
    }
    return decision;
  }

  String answer(Decision decision) {
    return policy.name() + ": " + decision.word() + " (" + decision.kind().sentence() + ")";
  }

  /** The case, one finding a line. */
  List<String> words(long[] point) {
    List<String> words = new ArrayList<>();
    Findings findings = findings(point);
    for (Finding finding : policy.vocabulary().findings()) {
      findings
          .entry(finding.name())
          .ifPresent(e -> words.add(finding.asks() + " " + value(finding, e.seen())));
    }
    return words;
  }

  private static String value(Finding finding, Seen seen) {
    if (finding.domain() instanceof Domain.Measure measure && seen.from().isPresent()) {
      return measure.print(seen.from().get()) + " " + measure.unit();
    }
    return seen.options().stream()
        .map(o -> finding.domain().option(o).map(Option::label).orElse(o))
        .collect(Collectors.joining(" or "));
  }
}
