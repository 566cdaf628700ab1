package org.tidemark.prove;

import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.Obstacles;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Outcome;
import org.tidemark.model.Statement;

/** What a policy itself, or a layer below it, says is always or never so of one question. */
final class StatementClaims {
  private final EffectivePolicy policy;
  private final EffectiveQuestion question;
  private final int budget;

  StatementClaims(EffectivePolicy policy, EffectiveQuestion question, int budget) {
    this.policy = policy;
    this.question = question;
    this.budget = budget;
  }

  List<Proof> prove() {
    return policy.statements().stream()
        .filter(s -> s.question().equals(question.name()))
        .map(this::prove)
        .toList();
  }

  private Proof prove(Statement statement) {
    Claim.Kind kind =
        switch (statement.mode()) {
          case ALWAYS -> Claim.Kind.ALWAYS;
          case NEVER -> Claim.Kind.NEVER;
        };
    return new Proof(
        new Claim(
            kind, question.name(), Optional.of(statement.name()), policy.fill(statement.says())),
        verdict(statement));
  }

  private Verdict verdict(Statement statement) {
    CompiledQuestion compiled = CompiledQuestion.lookingAt(policy, question, statement.given());
    Verdict spoken = speaksOfSomeCase(compiled, statement);
    return spoken.proved() ? holds(compiled, statement) : spoken;
  }

  /** What is said of no case at all would be true and worth nothing. */
  private Verdict speaksOfSomeCase(CompiledQuestion compiled, Statement statement) {
    Hunt hunt = new Hunt(budget, point -> QuestionClaims.NO_CASE);
    long[] everything = compiled.withSwitches(compiled.space().everything());
    compiled
        .boxes(statement.given())
        .forEach(b -> hunt.look(everything, List.of(b), Obstacles.of(compiled.impossible())));
    return hunt.oneMustBeFound(QuestionClaims.NO_CASE);
  }

  private Verdict holds(CompiledQuestion compiled, Statement statement) {
    Replay replay = new Replay(policy, question.name(), compiled.space());
    Hunt hunt = new Hunt(budget, point -> witness(replay, statement, point));
    long[] everything = compiled.withSwitches(compiled.space().everything());
    for (Box box : compiled.boxes(statement.given())) {
      Part given = new Part(List.of(box), compiled.impossible());
      for (Outcome outcome : statement.rulesOut()) {
        Part.with(outcome, compiled).stream()
            .map(given::and)
            .forEach(p -> hunt.look(everything, p));
      }
    }
    return hunt.noneMayBeFound();
  }

  private static Witness witness(Replay replay, Statement statement, long[] point) {
    return new Witness(
        replay.findings(point),
        replay.words(point),
        List.of(replay.answer(replay.of(point, statement.rulesOut()))));
  }
}
