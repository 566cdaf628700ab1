package org.tidemark.prove;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Obstacles;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/** The claim that a policy is nowhere less cautious than the floor that it builds on. */
final class FloorClaims {
  private final EffectivePolicy policy;
  private final EffectivePolicy floor;
  private final int budget;

  FloorClaims(EffectivePolicy policy, EffectivePolicy floor, int budget) {
    this.policy = policy;
    this.floor = floor;
    this.budget = budget;
  }

  Proof prove(String question) {
    List<CompiledQuestion> both = CompiledQuestion.both(policy, floor, question);
    Claim claim =
        new Claim(
            Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
            question,
            Optional.of(floor.name()),
            "No answer to `"
                + question
                + "` is less cautious than the answer of `"
                + floor.name()
                + (declared() ? "`, but for what is declared as a departure." : "`."));
    return new Proof(claim, verdict(question, both.get(0), both.get(1)));
  }

  /**
   * Looks for a case that the floor escalates and the policy does not, and for one in which the
   * policy proceeds and the floor holds or allows nothing. A box that is also in the way is left
   * out: nothing lies in it and dodges it, and most of a floor stands in the policy as it is.
   */
  private Verdict verdict(String question, CompiledQuestion mine, CompiledQuestion below) {
    Replay replay = new Replay(policy, question, mine.space());
    Hunt hunt = new Hunt(budget, point -> witness(replay, point));
    long[] everything = CompiledQuestion.withSwitches(mine.space().everything(), below.width());
    Obstacles notEscalated =
        Obstacles.of(QuestionClaims.join(mine.impossible(), below.impossible()))
            .and(mine.boxes(Effect.ESCALATE));
    Obstacles notStopped = notEscalated.and(mine.boxes(Effect.HOLD));
    Obstacles notAllowedBelow = notStopped.and(below.force());
    Set<Box> escalates = new HashSet<>(mine.boxes(Effect.ESCALATE));
    others(below.boxes(Effect.ESCALATE).stream(), escalates)
        .forEach(e -> hunt.look(everything, List.of(e), notEscalated));
    Set<Box> stops = new HashSet<>(mine.boxes(Effect.HOLD));
    stops.addAll(escalates);
    List<Box> holds = others(holds(below), stops);
    for (Box force : mine.force()) {
      holds.forEach(h -> hunt.look(everything, List.of(force, h), notStopped));
    }
    others(mine.force().stream(), new HashSet<>(below.force()))
        .forEach(force -> hunt.look(everything, List.of(force), notAllowedBelow));
    return hunt.noneMayBeFound();
  }

  private static List<Box> others(Stream<Box> boxes, Set<Box> than) {
    return boxes.filter(b -> !than.contains(b)).toList();
  }

  private boolean declared() {
    return policy.departed().stream().anyMatch(d -> d.departure().layer().equals(policy.name()));
  }

  /**
   * What the floor holds by its own rules. What it leaves to the hospital is no answer of its own.
   */
  private static Stream<Box> holds(CompiledQuestion floor) {
    return floor.rules().stream()
        .filter(r -> r.has(Effect.HOLD) && !r.isSilence())
        .map(CompiledRule::boxes)
        .flatMap(List::stream);
  }

  private static Witness witness(Replay replay, long[] point) {
    Decision decision = replay.of(point, EnumSet.of(Outcome.PROCEED, Outcome.HOLD));
    return new Witness(
        replay.findings(point),
        replay.words(point),
        List.of(replay.answer(decision), "The floor is more cautious here."));
  }
}
