package org.tidemark.guide;

import org.tidemark.model.Worded;

/** Whom an article speaks of. */
public enum Population implements Worded {
  ADULT,
  CHILD,
  NEWBORN
}
