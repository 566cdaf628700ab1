package org.tidemark.decide;

import org.tidemark.model.Outcome;

/**
 * How an unfinished case can come to an outcome for certain.
 *
 * @param outcome the outcome
 * @param word the question's own word for it
 * @param fewest the fewest findings that settle it so, with the values that do
 */
public record Way(Outcome outcome, String word, Least fewest) {}
