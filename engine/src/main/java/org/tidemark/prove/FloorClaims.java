package org.tidemark.prove;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.decide.Decision;
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
    CompiledQuestion mine = both.get(0);
    CompiledQuestion below = both.get(1);
    Replay replay = new Replay(policy, question, mine.space());
    Hunt hunt = new Hunt(budget, point -> witness(replay, point));
    long[] everything = CompiledQuestion.withSwitches(mine.space().everything(), below.width());
    List<Box> impossible = QuestionClaims.join(mine.impossible(), below.impossible());
    List<Box> notEscalated = QuestionClaims.join(impossible, mine.boxes(Effect.ESCALATE));
    List<Box> notStopped = QuestionClaims.join(notEscalated, mine.boxes(Effect.HOLD));
    below.boxes(Effect.ESCALATE).forEach(e -> hunt.look(everything, List.of(e), notEscalated));
    for (Box force : mine.force()) {
      holds(below).forEach(h -> hunt.look(everything, List.of(force, h), notStopped));
      hunt.look(everything, List.of(force), QuestionClaims.join(notStopped, below.force()));
    }
    return new Proof(
        new Claim(
            Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
            question,
            Optional.of(floor.name()),
            "No answer to `"
                + question
                + "` is less cautious than the answer of `"
                + floor.name()
                + "`."),
        hunt.noneMayBeFound());
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
