/** Policies told to solvers from outside the project, which must agree with the prover. */
@NullMarked
package org.tidemark.testkit.oracle;

import org.jspecify.annotations.NullMarked;
