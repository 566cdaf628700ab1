package org.tidemark.prove;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tidemark.decide.Cell;
import org.tidemark.decide.CellSpace;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Kind;
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
  private final String question;
  private final CellSpace space;

  /** Made for the first case: what is proved has none. */
  private @Nullable Decider decider;

  Replay(EffectivePolicy policy, String question, CellSpace space) {
    this.policy = policy;
    this.question = question;
    this.space = space;
  }

  Findings findings(long[] point) {
    return space.findings(point, FOUND);
  }

  private Decider decider() {
    Decider made = decider;
    if (made == null) {
      made = Decider.ofWhatIsSo(policy, question).orElseThrow();
      decider = made;
    }
    return made;
  }

  Decision of(long[] point) {
    return decider().decide(findings(point), ANY_DAY);
  }

  /** What is answered when nothing at all is known. */
  Decision answerToNothing() {
    return decider().decide(Findings.NONE, ANY_DAY);
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

  /**
   * Of a case, findings that make sure that no answer is less cautious than this one, whatever the
   * others are; none of them can be left out.
   *
   * @param kept what is not to be left out in any event
   */
  Set<String> holdsBack(long[] point, Outcome answer, Set<String> kept) {
    Map<String, Findings.Entry> left = new LinkedHashMap<>(findings(point).entries());
    List<String> lastAskedFirst = new ArrayList<>(left.keySet());
    Collections.reverse(lastAskedFirst);
    for (String name : lastAskedFirst) {
      Map<String, Findings.Entry> fewer = new LinkedHashMap<>(left);
      fewer.remove(name);
      if (!kept.contains(name) && staysAt(answer, new Findings(fewer))) {
        left = fewer;
      }
    }
    return left.keySet();
  }

  private boolean staysAt(Outcome answer, Findings findings) {
    Decision decision = decider().decide(findings, ANY_DAY);
    return decision.kind() != Kind.UNDECIDED
        && decision.possible().stream().noneMatch(o -> o.compareTo(answer) < 0);
  }

  /** The case, one finding a line; readings that no rule tells apart stand as a stretch. */
  List<String> words(long[] point) {
    return words(point, f -> true);
  }

  /** The same, of some findings. */
  List<String> words(long[] point, Predicate<Finding> which) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < space.size(); i++) {
      Finding finding = space.cells(i).finding();
      if (!which.test(finding)) {
        continue;
      }
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
