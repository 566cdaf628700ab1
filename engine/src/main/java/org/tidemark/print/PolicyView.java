package org.tidemark.print;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a guidance text may name of a policy: texts, lists of texts and whether a value is stated;
 * nothing else, so a template has nothing to reach for. Names are lower case with underscores.
 *
 * @param values the stated values as people read them, number and unit
 * @param stated every value name that exists, and whether this policy states it
 * @param lists lists of texts by name; an empty list is a list
 * @param policy the policy's own title, owner, edition and review date
 */
public record PolicyView(
    Map<String, String> values,
    Map<String, Boolean> stated,
    Map<String, List<String>> lists,
    Map<String, String> policy) {

  public PolicyView {
    values = sorted(values);
    stated = sorted(stated);
    lists = copied(lists);
    policy = sorted(policy);
    checkStated(values, stated);
  }

  private static void checkStated(Map<String, String> values, Map<String, Boolean> stated) {
    TreeSet<String> said = new TreeSet<>();
    stated.forEach(
        (name, is) -> {
          if (is) {
            said.add(name);
          }
        });
    if (!said.equals(values.keySet())) {
      throw new IllegalArgumentException(
          "stated values and their texts differ: " + said + " and " + values.keySet());
    }
  }

  private static <T> Map<String, T> sorted(Map<String, T> map) {
    return Collections.unmodifiableMap(new TreeMap<>(map));
  }

  private static Map<String, List<String>> copied(Map<String, List<String>> lists) {
    Map<String, List<String>> out = new LinkedHashMap<>();
    new TreeMap<>(lists).forEach((name, list) -> out.put(name, List.copyOf(list)));
    return Collections.unmodifiableMap(out);
  }
}
