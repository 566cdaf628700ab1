package org.tidemark.guide;

import org.tidemark.model.Worded;

/** What the tube is for. */
public enum TubeKind implements Worded {
  FEEDING,
  DRAINAGE
}
