package org.tidemark.model;

import java.util.Set;

/**
 * One of the answers to a finding's question.
 *
 * @param name its name in policies
 * @param label what the nurse reads
 */
public record Option(String name, String label) {
  private static final Set<String> NOTHING_RECORDED =
      Set.of("not-recorded", "not-looked", "not-measured");

  /**
   * Whether this answer says that nobody looked, measured or wrote it down. A negation never
   * includes such an answer.
   */
  public boolean nothingRecorded() {
    return NOTHING_RECORDED.contains(name);
  }
}
