package org.tidemark.guide;

import org.tidemark.model.Worded;

/** When in a tube's life an article is wanted. */
public enum Stage implements Worded {
  BEFORE,
  DURING,
  AFTER,
  SPECIAL,
  GOVERN,
  ANY
}
