package org.tidemark.decide;

/**
 * What the search for smallest sets works with.
 *
 * @param compiled the question
 * @param points looks at single cases
 * @param layout the boxes of the question, laid out for searching
 * @param limits how much work may be spent on one smallest set
 * @param misreading how far readings may be off
 */
record Means(
    CompiledQuestion compiled, Points points, Layout layout, Limits limits, Misreading misreading) {
  CellSpace space() {
    return compiled.space();
  }
}
