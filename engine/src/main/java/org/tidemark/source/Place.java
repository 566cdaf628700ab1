package org.tidemark.source;

/**
 * Where something was written. Any two places are equal: a place is never part of a meaning, so two
 * readings of the same policy compare equal wherever its lines stand.
 */
public final class Place {
  private final Span span;

  private Place(Span span) {
    this.span = span;
  }

  public static Place at(Span span) {
    return new Place(span);
  }

  public Span span() {
    return span;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Place;
  }

  @Override
  public int hashCode() {
    return 0;
  }

  @Override
  public String toString() {
    return span.toString();
  }
}
