package org.tidemark.source;

import java.util.function.Function;

/**
 * A value and where it was written; equal to another when the values are equal.
 *
 * @param value the value
 * @param place where it was written
 * @param <T> the value's type
 */
public record Located<T>(T value, Place place) {
  public static <T> Located<T> of(T value, Span span) {
    return new Located<>(value, Place.at(span));
  }

  public Span span() {
    return place.span();
  }

  /** The same place with another value. */
  public <U> Located<U> map(Function<? super T, ? extends U> change) {
    return new Located<>(change.apply(value), place);
  }

  @Override
  public String toString() {
    return value.toString();
  }
}
