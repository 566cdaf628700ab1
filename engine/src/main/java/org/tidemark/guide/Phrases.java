package org.tidemark.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.tidemark.source.Located;

/**
 * Finds listed phrases in a query, whatever light words stand between and whichever synonym was
 * typed. A phrase right behind a "no" or "not" of its own does not count.
 */
final class Phrases {
  private static final int REACH_OF_NOT = 2;

  private final GuideAnalyzer texts;
  private final Set<String> light;
  private final Map<List<String>, String> meanings = new HashMap<>();
  private final Map<String, List<String>> listed = new ConcurrentHashMap<>();
  private final int longest;

  Phrases(GuideAnalyzer texts, Words words) {
    this.texts = texts;
    this.light =
        words.light().stream()
            .flatMap(word -> Terms.words(texts, word.value()).stream())
            .collect(Collectors.toUnmodifiableSet());
    int group = 0;
    for (Words.Group same : words.same()) {
      String meaning = "#" + group++;
      same.phrases().forEach(p -> meanings.put(Terms.words(texts, p.value()), meaning));
    }
    this.longest = meanings.keySet().stream().mapToInt(List::size).max().orElse(1);
  }

  boolean isLight(String word) {
    return light.contains(word);
  }

  /** A text as meanings: synonyms made one, light words left out. */
  List<String> meanings(String text) {
    List<String> words = Terms.words(texts, text);
    List<String> out = new ArrayList<>();
    for (int at = 0; at < words.size(); ) {
      int taken = longestMeaning(words, at);
      String meaning = meanings.getOrDefault(words.subList(at, at + taken), words.get(at));
      if (!light.contains(meaning)) {
        out.add(meaning);
      }
      at += taken;
    }
    return out;
  }

  private int longestMeaning(List<String> words, int at) {
    for (int size = Math.min(longest, words.size() - at); size > 1; size--) {
      if (meanings.containsKey(words.subList(at, at + size))) {
        return size;
      }
    }
    return 1;
  }

  boolean anyIn(List<String> query, List<Located<String>> phrases) {
    return phrases.stream().anyMatch(phrase -> in(query, listed(phrase.value())));
  }

  /** The meanings of a listed phrase; the lists are short and asked again at every query. */
  private List<String> listed(String phrase) {
    return listed.computeIfAbsent(phrase, this::meanings);
  }

  private static boolean in(List<String> query, List<String> phrase) {
    for (int at = 0; !phrase.isEmpty() && at < query.size(); at++) {
      if (startsAt(query, at, phrase) && !denied(query, at, phrase)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the phrase starts here, with room for one other word between each two. */
  private static boolean startsAt(List<String> query, int at, List<String> phrase) {
    int next = at;
    for (int i = 0; i < phrase.size(); i++) {
      boolean skip = i > 0 && next + 1 < query.size() && !query.get(next).equals(phrase.get(i));
      if (skip && !Negation.is(query.get(next))) {
        next++;
      }
      if (next >= query.size() || !query.get(next).equals(phrase.get(i))) {
        return false;
      }
      next++;
    }
    return true;
  }

  private static boolean denied(List<String> query, int at, List<String> phrase) {
    return !Negation.is(phrase.get(0))
        && query.subList(Math.max(0, at - REACH_OF_NOT), at).stream().anyMatch(Negation::is);
  }

  /** Whether a signpost's phrases, its companions and none of its exceptions stand in a query. */
  boolean leads(Words.Signpost signpost, List<String> query) {
    return anyIn(query, signpost.phrases())
        && (signpost.with().isEmpty() || anyIn(query, signpost.with()))
        && !anyIn(query, signpost.unless());
  }
}
