package org.tidemark.print;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a place inside a template may name, and which values are sure to be stated there.
 *
 * @param names the names and what stands behind them
 * @param sure values that an #if around the place has found stated
 * @param loops how many #foreach stand around the place
 */
record Scope(Map<String, Shape> names, Set<String> sure, int loops) {
  static Scope of(Map<String, Shape> names) {
    return new Scope(names, Set.of(), 0);
  }

  Scope with(Set<String> more) {
    Set<String> both = new TreeSet<>(sure);
    both.addAll(more);
    return new Scope(names, both, loops);
  }

  Scope inLoop(String name, Shape item) {
    Map<String, Shape> more = new TreeMap<>(names);
    more.put(name, item);
    return new Scope(more, sure, loops + 1);
  }
}
