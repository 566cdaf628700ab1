package org.tidemark.testkit.oracle;

import java.util.List;
import org.tidemark.model.Outcome;
import org.tidemark.model.Statement;
import org.tidemark.prove.Claim;

/**
 * What a policy's own statement forbids, written out anew so that the model's reading is checked.
 */
final class Stated {
  private Stated() {}

  static Claim.Kind kind(Statement statement) {
    return statement.mode() == Statement.Mode.ALWAYS ? Claim.Kind.ALWAYS : Claim.Kind.NEVER;
  }

  /** The answers that belie it: to be more cautious than what is always asked is no breach. */
  static List<Outcome> rulesOut(Statement statement) {
    if (statement.mode() == Statement.Mode.NEVER) {
      return List.of(statement.answer());
    }
    return switch (statement.answer()) {
      case PROCEED -> List.of(Outcome.HOLD, Outcome.ESCALATE);
      case HOLD -> List.of(Outcome.PROCEED);
      case ESCALATE -> List.of(Outcome.PROCEED, Outcome.HOLD);
    };
  }
}
