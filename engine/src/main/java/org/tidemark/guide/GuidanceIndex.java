package org.tidemark.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;

/** Guidance with one policy's values in it, ready to be searched; it lives in memory. */
public final class GuidanceIndex {
  private final List<Entry> entries;
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final GuideAnalyzer texts;
  private final GuideAnalyzer queries;
  private final Phrases phrases;
  private final Routes routes;
  private final QueryReader reader;
  private final Ranking ranking;
  private final Suggestions suggestions;

  private GuidanceIndex(
      List<Entry> entries, Words words, GuideAnalyzer texts, GuideAnalyzer queries) {
    this.entries = entries;
    this.texts = texts;
    this.queries = queries;
    this.phrases = new Phrases(texts, words);
    this.routes = new Routes(words, phrases);
    this.ranking = written();
    this.reader = new QueryReader(texts, vocabulary(words));
    this.suggestions = new Suggestions(entries, texts.unstemmed());
    for (int number = 0; number < entries.size(); number++) {
      numbers.put(entries.get(number).article().name(), number);
    }
  }

  /** Builds an index, or says what is wrong with the articles or the words. */
  public static Loaded<GuidanceIndex> of(List<FilledArticle> articles, Words words) {
    Problems problems = new Problems();
    List<Entry> entries =
        articles.stream()
            .map(Entry::of)
            .sorted(Comparator.comparing((Entry entry) -> entry.article().name()))
            .toList();
    Links.check(articles.stream().map(FilledArticle::article).toList(), words, problems);
    GuideAnalyzer texts = GuideAnalyzer.forTexts(words);
    Apart.tryOut(words, texts, problems);
    GuideAnalyzer queries = Synonyms.chain(texts, words, problems);
    return problems.conclude(() -> new GuidanceIndex(entries, words, texts, queries));
  }

  private Ranking written() {
    try {
      return new Ranking(Shelves.write(entries, texts), entries.size());
    } catch (IOException impossible) {
      throw new UncheckedIOException("an index in memory could not be written", impossible);
    }
  }

  private Vocabulary vocabulary(Words words) {
    Vocabulary vocabulary = new Vocabulary(new Apart(words));
    GuideAnalyzer unstemmed = texts.unstemmed();
    vocabulary.add(ranking.words());
    for (String text : WordLists.texts(words)) {
      vocabulary.add(Terms.words(texts, text));
      vocabulary.add(Terms.words(unstemmed, text));
    }
    for (Entry entry : entries) {
      entry.texts().forEach(text -> vocabulary.add(Terms.words(unstemmed, text)));
    }
    return vocabulary;
  }

  /** How many articles there are. */
  public int size() {
    return entries.size();
  }

  /** What a reader may be about to type. */
  public List<String> suggest(String begun, int limit) {
    return suggestions.of(begun, limit);
  }

  /** Searches for one policy. */
  public GuidanceSearch search(PolicyContext policy) {
    return new GuidanceSearch(this, policy);
  }

  Entry entry(int number) {
    return entries.get(number);
  }

  Entry entry(String article) {
    return entries.get(number(article));
  }

  int number(String article) {
    Integer number = numbers.get(article);
    if (number == null) {
      throw new IllegalArgumentException("no article has this name: " + article);
    }
    return number;
  }

  GuideAnalyzer texts() {
    return texts;
  }

  GuideAnalyzer queries() {
    return queries;
  }

  Phrases phrases() {
    return phrases;
  }

  Routes routes() {
    return routes;
  }

  QueryReader reader() {
    return reader;
  }

  Ranking ranking() {
    return ranking;
  }
}
