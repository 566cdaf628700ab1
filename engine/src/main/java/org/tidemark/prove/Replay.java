package org.tidemark.prove;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.decide.Cell;
import org.tidemark.decide.CellSpace;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** Replays a case through the ordinary evaluator and says it in bedside words. */
final class Replay {
  private static final Place FOUND =
      Place.at(SourceText.of("found by the prover", "case").beginning());

  /** Answers do not depend on the day; only a caution does, and no claim is about that. */
  private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

  private final EffectivePolicy policy;
  private final Decider decider;
  private final CellSpace space;

  Replay(EffectivePolicy policy, String question, CellSpace space) {
    this.policy = policy;
    this.decider = Decider.of(policy, question).orElseThrow();
    this.space = space;
  }

  Findings findings(long[] point) {
    return space.findings(point, FOUND);
  }

  Decision of(long[] point) {
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
  Decision of(long[] point, Set<Outcome> expected) {
    Decision decision = of(point);
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

  /** The case, one finding a line; readings that no rule tells apart stand as a stretch. */
  List<String> words(long[] point) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < space.size(); i++) {
      Finding finding = space.cells(i).finding();
      Cell cell = space.cells(i).cell(Long.numberOfTrailingZeros(point[i]));
      value(finding, cell).ifPresent(v -> words.add(finding.asks() + " " + v));
    }
    return words;
  }

  private static Optional<String> value(Finding finding, Cell cell) {
    if (cell instanceof Cell.OptionCell option) {
      return Optional.of(option.option().label());
    }
    return cell instanceof Cell.NumberCell number
            && finding.domain() instanceof Domain.Measure measure
        ? Optional.of(stretch(number, measure) + " " + measure.unit())
        : Optional.empty();
  }

  private static String stretch(Cell.NumberCell number, Domain.Measure measure) {
    String low = measure.print(number.lowest());
    boolean one = number.lowest().compareTo(number.highest()) == 0;
    return one ? low : low + " to " + measure.print(number.highest());
  }
}
