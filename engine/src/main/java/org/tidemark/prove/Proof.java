package org.tidemark.prove;

/**
 * A claim and what came of it.
 *
 * @param claim the claim
 * @param verdict what came of it
 */
public record Proof(Claim claim, Verdict verdict) {}
