package org.tidemark.source;

/** How much a diagnostic matters. */
public enum Severity {
  /** What was read cannot be used. */
  ERROR,
  /** It can be used, and somebody should look. */
  WARNING,
  /** Worth knowing. */
  NOTICE,
  /** A warning or notice that somebody answerable has seen and let stand, with a reason. */
  ACCEPTED
}
