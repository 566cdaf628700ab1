package org.tidemark.model;

/** How feed goes down a tube. */
public enum FeedMode implements Worded {
  /** Hour after hour; a pause does not end it. */
  CONTINUOUS,
  /** A portion at a time. */
  BOLUS,
  /** No feed is running. */
  NONE
}
