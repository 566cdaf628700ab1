package org.tidemark.print;

import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Outcome;
import org.tidemark.model.Statement;
import org.tidemark.prove.Claim;

/** Says in words what a statement of a policy comes to, beside the sentence that it was given. */
public final class StatementWords {
  private final EffectivePolicy policy;

  public StatementWords(EffectivePolicy policy) {
    this.policy = policy;
  }

  /** The cases that it speaks of. */
  public String given(Statement statement) {
    return new GivenWords(policy).of(statement.given());
  }

  /** What is always answered then, or never. */
  public String answer(Statement statement) {
    String word =
        policy
            .question(statement.question())
            .map(q -> q.word(statement.answer()))
            .orElse(statement.answer().word());
    boolean orMore =
        statement.mode() == Statement.Mode.ALWAYS && statement.answer() == Outcome.HOLD;
    return statement.mode().word() + " " + word + (orMore ? ", or what is more cautious" : "");
  }

  /** Who said it, and on what grounds. */
  public String saidBy(Statement statement) {
    List<String> sources = statement.backing().sources();
    String cited = sources.isEmpty() ? "" : " (" + String.join(", ", sources) + ")";
    String why = statement.because().map(b -> " " + policy.fill(b)).orElse("");
    return "Said by " + statement.layer() + cited + "." + why;
  }

  /** The statement that a claim was made of. */
  public static Optional<Statement> behind(EffectivePolicy policy, Claim claim) {
    return switch (claim.kind()) {
      case ALWAYS, NEVER -> claim.subject().flatMap(policy::statement);
      default -> Optional.empty();
    };
  }

  /** All of it on one line. */
  public String whole(Statement statement) {
    return statement.question() + ", given " + given(statement) + ": " + answer(statement) + ".";
  }
}
