package org.tidemark.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;

/**
 * A part of the space of cases: what lies in all of some boxes and dodges others.
 *
 * @param in the boxes that it lies in
 * @param dodge the boxes that it dodges
 */
record Part(List<Box> in, List<Box> dodge) {
  Part {
    in = List.copyOf(in);
    dodge = List.copyOf(dodge);
  }

  /** Parts that together hold every case with this outcome, and no other. */
  static List<Part> with(Outcome outcome, CompiledQuestion compiled) {
    List<Box> escalate = compiled.boxes(Effect.ESCALATE);
    List<Box> stop = QuestionClaims.join(escalate, compiled.boxes(Effect.HOLD));
    return switch (outcome) {
      case ESCALATE -> each(escalate, List.of());
      case PROCEED -> each(compiled.force(), stop);
      case HOLD ->
          Stream.concat(
                  each(compiled.boxes(Effect.HOLD), escalate).stream(),
                  Stream.of(new Part(List.of(), QuestionClaims.join(escalate, compiled.force()))))
              .toList();
    };
  }

  static List<Part> each(List<Box> boxes, List<Box> dodge) {
    return boxes.stream().map(b -> new Part(List.of(b), dodge)).toList();
  }

  /** What lies in this part and in another. */
  Part and(Part other) {
    List<Box> both = new ArrayList<>(in);
    both.addAll(other.in);
    return new Part(both, QuestionClaims.join(dodge, other.dodge));
  }
}
