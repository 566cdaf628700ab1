package org.tidemark.model;

/** How well a value or rule is backed by what was published. */
public enum Standing implements Worded {
  /** The source was opened and says so. */
  READ,
  /** Remembered; no page was seen. May be shown, never issued. */
  FROM_MEMORY,
  /** Follows from what was read, in our understanding. */
  OUR_READING,
  /** The hospital's own decision. */
  LOCAL
}
