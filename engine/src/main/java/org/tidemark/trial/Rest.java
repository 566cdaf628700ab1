package org.tidemark.trial;

import org.tidemark.model.Worded;

/** What a worked case takes everything to be that it does not name. */
public enum Rest implements Worded {
  /** What it usually is. Only worked cases may say so. */
  USUAL,
  /** Not known: it may be anything. */
  UNKNOWN
}
