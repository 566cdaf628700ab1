package org.tidemark.model;

/** Which items of which list count, before any rule is looked at. */
public record Counts() {
  public static final Counts NONE = new Counts();
}
