package org.tidemark.model;

/** What a policy file is for. */
public enum PolicyKind implements Worded {
  /** A published minimum to build on; never answers at a bedside itself. */
  FLOOR,
  /** A hospital's policy. */
  HOSPITAL,
  /** A unit's policy on top of its hospital's. */
  UNIT,
  /** A plan for one patient on top of a policy; it ends. */
  PLAN,
  /** Our reading of somebody's published page; for tests and comparison, never for a bedside. */
  PUBLISHED;

  /** Whether such a policy may answer a nurse. */
  public boolean servesBedside() {
    return this == HOSPITAL || this == UNIT || this == PLAN;
  }
}
