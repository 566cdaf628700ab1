package org.tidemark.watch;

/** The options of the finding that says whether the last check still stands. */
final class Words {
  static final String STANDING = "standing";
  static final String LAPSED = "lapsed";
  static final String NEVER = "never";
  static final String NOT_RECORDED = "not-recorded";

  private Words() {}
}
