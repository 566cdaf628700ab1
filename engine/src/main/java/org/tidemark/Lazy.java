package org.tidemark;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that is made when it is first wanted, and once.
 *
 * @param <T> what it is
 */
final class Lazy<T> {
  private final Supplier<T> maker;
  private @Nullable T made;

  Lazy(Supplier<T> maker) {
    this.maker = maker;
  }

  synchronized T get() {
    T value = made;
    if (value == null) {
      value = maker.get();
      made = value;
    }
    return value;
  }
}
