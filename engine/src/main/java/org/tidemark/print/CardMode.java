package org.tidemark.print;

import org.tidemark.model.Worded;

/** How a card is worked through; printed in its heading. */
public enum CardMode implements Worded {
  DO_THEN_CONFIRM("Do, then confirm"),
  READ_THEN_DO("Read, then do");

  private final String words;

  CardMode(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
