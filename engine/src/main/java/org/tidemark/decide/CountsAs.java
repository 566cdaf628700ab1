package org.tidemark.decide;

/**
 * A reading that counts as a stretch, since the policy says that it may be off.
 *
 * @param finding the finding
 * @param asks what was asked
 * @param read what was entered, in words
 * @param counts what it counts as, in words
 * @param off by how much a reading may be off, in words
 */
public record CountsAs(String finding, String asks, String read, String counts, String off) {
  /** The whole in words. */
  public String sentence() {
    return "A reading of "
        + read
        + " counts as "
        + counts
        + ": this policy says a reading may be off by "
        + off
        + ".";
  }
}
