package org.tidemark.prove;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Box;
import org.tidemark.decide.Cell;
import org.tidemark.decide.Cells;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.Obstacles;
import org.tidemark.decide.Twin;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Barred;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Worse;

/** The claims about one question that look at two cases at a time, alike but for one finding. */
final class PairClaims {
  private final EffectivePolicy policy;
  private final CompiledQuestion compiled;
  private final String question;
  private final Replay replay;
  private final int budget;

  PairClaims(EffectivePolicy policy, EffectiveQuestion question, int budget) {
    this.policy = policy;
    this.compiled = CompiledQuestion.cutAtOpenBands(policy, question);
    this.question = question.name();
    this.replay = new Replay(policy, question.name(), compiled.space());
    this.budget = budget;
  }

  List<Proof> prove() {
    List<Proof> proofs = new ArrayList<>();
    for (int i = 0; i < compiled.space().size(); i++) {
      worse(i).ifPresent(proofs::add);
      barred(i).ifPresent(proofs::add);
    }
    return proofs;
  }

  private Optional<Proof> worse(int finding) {
    Cells cells = compiled.space().cells(finding);
    List<Long> leastToMost = leastToMost(cells);
    if (leastToMost.size() < 2) {
      return Optional.empty();
    }
    Pair pair = new Pair(finding);
    for (int i = 0; i + 1 < leastToMost.size(); i++) {
      long worse =
          leastToMost.subList(i + 1, leastToMost.size()).stream().reduce(0L, (a, b) -> a | b);
      pair.lookFor(leastToMost.get(i), worse);
    }
    String name = cells.finding().name();
    return Optional.of(
        new Proof(
            new Claim(
                Claim.Kind.WORSE_NEVER_LOOSENS,
                question,
                Optional.of(name),
                "Where `"
                    + name
                    + "` gets worse and nothing else changes, the answer never moves towards proceed."),
            pair.verdict()));
  }

  /**
   * The cells that have a place in the finding's order, from the least to the most worrying. What
   * nobody recorded has none, nor has a reading that the policy itself leaves open.
   */
  private List<Long> leastToMost(Cells cells) {
    List<Long> order = new ArrayList<>();
    Worse worse = cells.finding().worse();
    if (worse instanceof Worse.Ranked ranked) {
      ranked.leastToMost().stream().map(cells::option).filter(c -> c != 0).forEach(order::add);
    } else if (!(worse instanceof Worse.Neither)) {
      for (int i = 0; i < cells.count(); i++) {
        if (cells.cell(i) instanceof Cell.NumberCell number
            && !leftOpen(cells.finding().name(), number)) {
          order.add(worse instanceof Worse.Higher ? order.size() : 0, 1L << i);
        }
      }
    }
    return order;
  }

  private boolean leftOpen(String finding, Cell.NumberCell number) {
    return policy.bands().stream()
        .filter(b -> b.of().equals(finding) && b.notStated().isPresent())
        .anyMatch(
            b ->
                Alternatives.of(policy, new Condition.InNamedBand(finding, b.name()))
                    .get(0)
                    .get(0)
                    .stretch()
                    .orElseThrow()
                    .holds(number.lowest()));
  }

  private Optional<Proof> barred(int finding) {
    Cells cells = compiled.space().cells(finding);
    Optional<Barred> test =
        policy.barred().stream()
            .filter(b -> b.finding().equals(cells.finding().name()))
            .findFirst();
    if (test.isEmpty()) {
      return Optional.empty();
    }
    long bad = test.get().options().stream().mapToLong(cells::option).reduce(0, (a, b) -> a | b);
    long rest = cells.all() & ~bad & ~cells.notApplicable();
    Pair pair = new Pair(finding);
    pair.lookFor(rest, bad);
    String name = cells.finding().name();
    return Optional.of(
        new Proof(
            new Claim(
                Claim.Kind.BARRED_NEVER_LOOSENS,
                question,
                Optional.of(name),
                "What `"
                    + name
                    + "` shows that must not count never moves the answer towards proceed."),
            pair.verdict()));
  }

  /**
   * Two cases alike but for one finding, and the search for a second that is less cautious than the
   * first.
   */
  private final class Pair {
    private final int finding;
    private final int[] differing;
    private final Twin twin;
    private final Hunt hunt;
    private final List<Box> escalate = compiled.boxes(Effect.ESCALATE);
    private final List<Box> stop = QuestionClaims.join(escalate, compiled.boxes(Effect.HOLD));
    private final Obstacles secondNotEscalated;
    private final Obstacles secondProceeds;
    private final Obstacles firstNotAllowed;

    Pair(int finding) {
      this.finding = finding;
      this.differing = compiled.withSwitchesOf(new int[] {finding});
      this.twin = new Twin(compiled, differing);
      this.hunt = new Hunt(budget, this::witness);
      Obstacles impossible = Obstacles.of(twin.impossible());
      this.secondNotEscalated = impossible.and(twin.second(escalate));
      this.secondProceeds = impossible.and(twin.second(stop));
      this.firstNotAllowed = secondProceeds.and(compiled.force());
    }

    void lookFor(long inFirst, long inSecond) {
      long[] region = twin.region(compiled.space().everything());
      region[finding] &= inFirst;
      region[twin.inSecond(finding)] &= inSecond;
      escalate.stream()
          .filter(e -> onlyFirstIn(e, inFirst, inSecond))
          .forEach(e -> hunt.look(region, List.of(e), secondNotEscalated));
      List<Box> stops = stop.stream().filter(s -> onlyFirstIn(s, inFirst, inSecond)).toList();
      for (Box force : compiled.force()) {
        Box second = twin.second(force);
        stops.forEach(s -> hunt.look(region, List.of(second, s), secondProceeds));
        if (onlySecondIn(force, inFirst, inSecond)) {
          hunt.look(region, List.of(second), firstNotAllowed);
        }
      }
    }

    /**
     * Whether the first case can lie in a box of a rule and the second outside it: only the finding
     * itself can tell them apart there. Spares most searches where the policy is as it should be.
     */
    private boolean onlyFirstIn(Box stops, long inFirst, long inSecond) {
      long cells = stops.cellsOf(finding);
      return (inFirst & cells) != 0 && (inSecond & ~cells) != 0;
    }

    /** The same the other way round; what a rule that sets it aside thinks of them counts too. */
    private boolean onlySecondIn(Box force, long inFirst, long inSecond) {
      long cells = force.cellsOf(finding);
      return ((inSecond & cells) != 0 && (inFirst & ~cells) != 0) || looksAtSwitch(force);
    }

    private boolean looksAtSwitch(Box force) {
      return Arrays.stream(differing).anyMatch(d -> d != finding && force.mentions(d));
    }

    private Witness witness(long[] both) {
      long[] second = twin.secondCase(both);
      String first = replay.answer(replay.of(both, EnumSet.of(Outcome.HOLD, Outcome.ESCALATE)));
      String other = replay.answer(replay.of(second, EnumSet.of(Outcome.PROCEED, Outcome.HOLD)));
      String name = compiled.space().cells(finding).finding().name();
      return new Witness(
          replay.findings(second),
          replay.words(second),
          List.of("With this case: " + other, "With the better `" + name + "`: " + first));
    }

    Verdict verdict() {
      return hunt.noneMayBeFound();
    }
  }
}
