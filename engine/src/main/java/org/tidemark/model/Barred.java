package org.tidemark.model;

import java.util.List;

/**
 * Answers that may be entered and must not count as evidence.
 *
 * @param finding the finding's name
 * @param options the option names that do not count
 * @param because why, as one sentence
 * @param words words that name the test, in texts
 * @param sources where that is published; empty in the vocabulary, which leaves it to the policy
 */
public record Barred(
    String finding,
    List<String> options,
    String because,
    List<String> words,
    List<String> sources) {
  public Barred {
    options = List.copyOf(options);
    words = List.copyOf(words);
    sources = List.copyOf(sources);
  }

  /** A test that no word names. */
  public Barred(String finding, List<String> options, String because, List<String> sources) {
    this(finding, options, because, List.of(), sources);
  }
}
