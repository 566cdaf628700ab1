package org.tidemark;

import java.util.List;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.prove.Verdict;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;

/** What a policy must be able to show before anything of it is printed or signed. */
final class Claims {
  private Claims() {}

  /** Each claim that is not proved: refuted, or not settled, which is no better. */
  static List<Diagnostic> notProved(EffectivePolicy policy) {
    return new Prover()
        .prove(policy, policy.heldAgainst()).stream()
            .filter(p -> !p.verdict().proved())
            .map(p -> diagnostic(policy, p))
            .toList();
  }

  private static Diagnostic diagnostic(EffectivePolicy policy, Proof proof) {
    boolean refuted = proof.verdict() instanceof Verdict.Refuted;
    return Diagnostic.error(
            DiagnosticCode.CLAIM_NOT_PROVED,
            policy.header().place().span(),
            (refuted ? "this is not so: " : "this could not be settled: ")
                + proof.claim().sentence())
        .help("the verb prove shows a case; correct the policy, and prove it again");
  }
}
