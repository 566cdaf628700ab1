package org.tidemark.model;

/** What a policy binds itself to, and where it departs from what it builds on. */
public record Commitments() {
  public static final Commitments NONE = new Commitments();
}
