package org.tidemark.testkit.oracle;

import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;

/**
 * A case that the solver found, and what it says that a policy answers.
 *
 * @param policy the policy
 * @param question its question
 * @param findings the case
 * @param outcome the answer
 * @param fired the rules that fire
 */
record Shown(
    EffectivePolicy policy,
    String question,
    Findings findings,
    Outcome outcome,
    Set<String> fired) {

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(policy.name()).append(' ').append(question).append(" {");
    findings
        .entries()
        .forEach((f, e) -> out.append(f).append(": ").append(e.seen().words()).append(", "));
    return out.append("} gives ").append(outcome).append(" by ").append(fired).toString();
  }
}
