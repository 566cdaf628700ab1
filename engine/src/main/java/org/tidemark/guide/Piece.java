package org.tidemark.guide;

import java.util.List;

/**
 * A segment of a query and what it is worth.
 *
 * @param segment the segment
 * @param weight how rare its meaning is among the articles; nothing when no article holds it
 * @param light whether it is made of light words only
 */
record Piece(Segments.Segment segment, double weight, boolean light) {
  boolean known() {
    return weight > 0;
  }

  /** Whether it says what the query is about: neither light nor a mere number. */
  boolean telling() {
    return !light && typed().codePoints().noneMatch(Character::isDigit);
  }

  /**
   * Whether it is a "not" with the word behind it, put at the end beside the pieces it is made of.
   */
  boolean denial() {
    return segment.typed().size() == 2
        && segment.others().isEmpty()
        && Negation.is(segment.typed().get(0));
  }

  /** The words as they were typed, in one text. */
  String typed() {
    return String.join(" ", segment.typed());
  }

  List<List<String>> readings() {
    return segment.readings();
  }
}
