package org.tidemark.guide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Titles and questions that hold a word for each word begun, shortest first. */
final class Suggestions {
  private final GuideAnalyzer words;
  private final List<String> lines = new ArrayList<>();
  private final NavigableMap<String, Set<Integer>> byWord = new TreeMap<>();

  Suggestions(List<Entry> entries, GuideAnalyzer words) {
    this.words = words;
    Set<String> distinct = new LinkedHashSet<>();
    entries.forEach(entry -> distinct.addAll(entry.lines()));
    lines.addAll(distinct);
    lines.sort(java.util.Comparator.comparingInt(String::length).thenComparing(line -> line));
    for (int i = 0; i < lines.size(); i++) {
      for (String word : Terms.words(words, lines.get(i))) {
        byWord.computeIfAbsent(word, w -> new TreeSet<>()).add(i);
      }
    }
  }

  List<String> of(String begun, int limit) {
    List<String> typed = Terms.words(words, begun.length() > QueryReader.LONGEST ? "" : begun);
    if (typed.isEmpty()) {
      return List.of();
    }
    Set<Integer> fitting = beginning(typed.get(typed.size() - 1));
    for (String whole : typed.subList(0, typed.size() - 1)) {
      fitting.retainAll(byWord.getOrDefault(whole, Collections.emptySet()));
    }
    return fitting.stream().limit(limit).map(lines::get).toList();
  }

  private Set<Integer> beginning(String letters) {
    Set<Integer> found = new TreeSet<>();
    byWord
        .subMap(letters, true, letters + Character.MAX_VALUE, false)
        .values()
        .forEach(found::addAll);
    return found;
  }
}
