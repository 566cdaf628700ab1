package org.tidemark.decide;

/**
 * How much work may be spent on one smallest set. What needs more is not worked out, and that is
 * said.
 *
 * @param search steps of each search for a case
 * @param pairs steps of all searches for two cases that differ
 * @param rounds how often it may choose again
 * @param choosing steps of choosing, over all rounds
 */
record Limits(int search, int pairs, int rounds, int choosing) {
  /** Many times what any shipped policy takes. */
  static Limits of(int search) {
    return new Limits(search, 10 * search, 1_000, 200_000);
  }
}
