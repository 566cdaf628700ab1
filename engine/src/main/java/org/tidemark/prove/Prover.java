package org.tidemark.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;

/**
 * Proves what every policy must be able to show, over all cases and not only over those that
 * somebody thought of.
 */
public final class Prover {
  /**
   * Enough steps for any policy seen many times over; a claim that needs more is undecided, and
   * fails.
   */
  public static final int BUDGET = 2_000_000;

  private final int budget;

  public Prover() {
    this(BUDGET);
  }

  public Prover(int budget) {
    this.budget = budget;
  }

  /**
   * Proves or refutes every claim about a policy.
   *
   * @param policy the policy
   * @param floor the policy that it is held against, if there is one
   */
  public List<Proof> prove(EffectivePolicy policy, Optional<EffectivePolicy> floor) {
    List<Proof> proofs = new ArrayList<>();
    for (EffectiveQuestion question : policy.questions()) {
      proofs.addAll(new QuestionClaims(policy, question, budget).prove());
      proofs.addAll(new PairClaims(policy, question, budget).prove());
      proofs.addAll(new StatementClaims(policy, question, budget).prove());
      floor
          .filter(f -> f.question(question.name()).isPresent())
          .ifPresent(f -> proofs.add(new FloorClaims(policy, f, budget).prove(question.name())));
    }
    floor.ifPresent(f -> proofs.addAll(new ListClaims(policy, f).prove()));
    return List.copyOf(proofs);
  }

  /** Whether every case of a question is spoken of by a rule. */
  public Proof noGap(EffectivePolicy policy, String question) {
    EffectiveQuestion asked = policy.question(question).orElseThrow();
    return new QuestionClaims(policy, asked, budget).noGap();
  }

  /** Whether a question is nowhere answered less cautiously than the floor answers it. */
  public Proof neverLooser(EffectivePolicy policy, EffectivePolicy floor, String question) {
    return new FloorClaims(policy, floor, budget).prove(question);
  }
}
