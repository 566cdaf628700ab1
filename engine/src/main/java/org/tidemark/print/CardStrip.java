package org.tidemark.print;

import java.time.LocalDate;

/**
 * What every side of every card says about itself, so that an old copy can be told from a new one.
 *
 * @param hospital whose policy it is
 * @param card the card's name
 * @param code the card's short code; it stays the same from edition to edition
 * @param forWhom whom and where it is for
 * @param edition the policy's edition
 * @param issued the day from which it holds
 * @param useUntil the last day on which it may be used
 * @param owner the role or body to tell; never a person's name
 * @param reference the approving body's reference
 * @param page this side's number
 * @param pages how many sides there are
 * @param draft whether it may not be used yet
 */
public record CardStrip(
    String hospital,
    String card,
    String code,
    String forWhom,
    String edition,
    LocalDate issued,
    LocalDate useUntil,
    String owner,
    String reference,
    int page,
    int pages,
    boolean draft) {
  public CardStrip {
    if (useUntil.isBefore(issued)) {
      throw new IllegalArgumentException("a card ends on " + useUntil + ", before its issue");
    }
    if (page < 1 || page > pages) {
      throw new IllegalArgumentException("side " + page + " of " + pages);
    }
  }
}
