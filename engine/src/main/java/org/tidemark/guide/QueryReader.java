package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads a typed query: cuts it to size, takes out what nobody can see, mends slips of the hand. */
final class QueryReader {
  /** More than anybody types; what lies beyond is not looked at. */
  static final int LONGEST = 300;

  private final GuideAnalyzer texts;
  private final GuideAnalyzer unstemmed;
  private final Vocabulary vocabulary;

  QueryReader(GuideAnalyzer texts, Vocabulary vocabulary) {
    this.texts = texts;
    this.unstemmed = texts.unstemmed();
    this.vocabulary = vocabulary;
  }

  QueryReading read(String typed) {
    String cut = cut(typed);
    String tidy = NumberReader.points(visible(cut));
    List<QueryReading.Correction> slips = new ArrayList<>();
    StringBuilder read = new StringBuilder();
    int at = 0;
    for (Terms.Term word : Terms.of(unstemmed, tidy)) {
      Optional<String> meant = meant(word.word());
      if (meant.isPresent()) {
        slips.add(new QueryReading.Correction(word.word(), meant.get()));
        read.append(tidy, at, word.start()).append(meant.get());
        at = word.end();
      }
    }
    read.append(tidy.substring(at));
    return new QueryReading(cut, read.toString(), slips, NumberReader.numbers(tidy));
  }

  private Optional<String> meant(String word) {
    List<String> stem = Terms.words(texts, word);
    boolean known = stem.stream().allMatch(vocabulary::knows);
    return known ? Optional.empty() : vocabulary.nearest(word);
  }

  private static String cut(String typed) {
    int end = Math.min(typed.length(), LONGEST);
    boolean insidePair = end < typed.length() && Character.isLowSurrogate(typed.charAt(end));
    return typed.substring(0, insidePair ? end - 1 : end);
  }

  private static String visible(String typed) {
    StringBuilder out = new StringBuilder(typed.length());
    typed.chars().forEach(c -> out.append(Character.isISOControl(c) ? ' ' : (char) c));
    return out.toString().toLowerCase(Locale.ROOT);
  }
}
