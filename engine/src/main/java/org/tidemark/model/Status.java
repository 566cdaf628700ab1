package org.tidemark.model;

/** Where a policy stands in its life. */
public enum Status implements Worded {
  DRAFT,
  APPROVED,
  WITHDRAWN
}
