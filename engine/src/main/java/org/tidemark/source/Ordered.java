package org.tidemark.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Copies that cannot be changed and keep the order of what was written. {@code Set.copyOf} and
 * {@code Map.copyOf} shuffle anew in every run of the JVM, so that one policy would list its
 * reasons in another order each day.
 */
public final class Ordered {
  private Ordered() {}

  public static <T> Set<T> set(Collection<? extends T> items) {
    return Collections.unmodifiableSet(new LinkedHashSet<T>(items));
  }

  public static <K, V> Map<K, V> map(Map<? extends K, ? extends V> entries) {
    return Collections.unmodifiableMap(new LinkedHashMap<K, V>(entries));
  }
}
