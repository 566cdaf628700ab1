package org.tidemark.testkit.oracle;

/**
 * When a condition holds and when it is recorded not to. Where neither does, something that it
 * looks at is not recorded or does not exist.
 *
 * @param yes when it holds
 * @param no when it does not
 * @param <B> a formula of a solver
 */
record Truth<B>(B yes, B no) {}
