package org.tidemark.testkit.oracle;

import com.microsoft.z3.BoolExpr;
import java.util.Optional;
import java.util.Set;
import org.tidemark.prove.Claim;

/**
 * A claim as a search for a case.
 *
 * @param kind what sort of claim it is
 * @param subject what it is about
 * @param mustExist whether such a case bears the claim out; else it refutes it
 * @param speaksOf a case of this too must exist, or nothing is claimed of anything
 * @param formula the cases that are sought
 * @param looksAt the findings that a case is made of
 * @param differs the finding in which a second case differs from the first, for a claim about two
 */
record Sought(
    Claim.Kind kind,
    Optional<String> subject,
    boolean mustExist,
    Optional<BoolExpr> speaksOf,
    BoolExpr formula,
    Set<String> looksAt,
    Optional<String> differs) {}
