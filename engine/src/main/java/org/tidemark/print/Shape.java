package org.tidemark.print;

import java.util.Map;
import java.util.TreeMap;

/** What may stand behind a name in a template: what can be printed, asked, repeated or opened. */
sealed interface Shape {
  /** Something without parts. */
  enum Plain implements Shape {
    /** A text; it can be printed, asked for and compared with a literal. */
    WORDS,
    /** A yes or no; it can only be asked. */
    FLAG
  }

  /**
   * A list; it can be repeated over, and asked whether it holds anything.
   *
   * @param of what its items are
   */
  record ListOf(Shape of) implements Shape {}

  /**
   * Named parts; one of them can be taken.
   *
   * @param parts the parts
   */
  record Parts(Map<String, Shape> parts) implements Shape {
    public Parts {
      parts = new TreeMap<>(parts);
    }
  }

  /** What kind of thing this is, in an author's words. */
  default String kind() {
    if (this instanceof Plain plain) {
      return plain == Plain.WORDS ? "a text" : "a yes or no";
    }
    return this instanceof ListOf ? "a list" : "a group of names";
  }
}
