package org.tidemark.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.tidemark.guide.Article;
import org.tidemark.guide.ArticleReader;
import org.tidemark.guide.Ask;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.GuidanceIndex;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.PolicyContext;
import org.tidemark.guide.Words;
import org.tidemark.source.SourceText;

/**
 * How long it takes to index 60 and 10,000 invented articles and to answer one query over them. Not
 * a JMH benchmark: the tail of single queries is what matters, so every query is timed by itself.
 * Run its main method.
 */
public final class SearchGuidance {
  private static final int WORDS_KNOWN = 4_000;
  private static final int WARM_UP = 2_000;
  private static final int TIMED = 10_000;

  private final Random chance = new Random(7);
  private final List<String> words = new ArrayList<>();

  private SearchGuidance() {
    for (int i = 0; i < WORDS_KNOWN; i++) {
      words.add(invented());
    }
  }

  /** Prints the figures. */
  public static void main(String[] arguments) {
    long start = System.nanoTime();
    SearchGuidance first = new SearchGuidance();
    first.measure(60, start);
    new SearchGuidance().measure(10_000, System.nanoTime());
  }

  private void measure(int articles, long start) {
    List<FilledArticle> filled = new ArrayList<>();
    for (int i = 0; i < articles; i++) {
      filled.add(article(i));
    }
    long read = System.nanoTime();
    GuidanceSearch search =
        GuidanceIndex.of(filled, Words.NONE)
            .match(
                index -> index,
                errors -> {
                  throw new IllegalStateException(errors.get(0).render());
                })
            .search(PolicyContext.of("bench", "1"));
    long indexed = System.nanoTime();
    search.find(Ask.of(query()));
    long hit = System.nanoTime();
    print(
        "%,d articles: read %d ms, index %d ms, first hit %d ms",
        articles, millis(read - start), millis(indexed - read), millis(hit - indexed));
    times(search);
  }

  private void times(GuidanceSearch search) {
    for (int i = 0; i < WARM_UP; i++) {
      search.find(Ask.of(query()));
    }
    long[] times = new long[TIMED];
    for (int i = 0; i < TIMED; i++) {
      String query = query();
      long before = System.nanoTime();
      search.find(Ask.of(query));
      times[i] = System.nanoTime() - before;
    }
    Arrays.sort(times);
    print(
        "  query p50 %.2f ms, p99 %.2f ms, longest %.2f ms",
        times[TIMED / 2] / 1e6, times[TIMED * 99 / 100] / 1e6, times[TIMED - 1] / 1e6);
  }

  private FilledArticle article(int number) {
    StringBuilder text = new StringBuilder("---\narticle: a").append(number).append("\ntitle: ");
    text.append(some(5)).append("\nanswers:\n");
    for (int i = 0; i < 8; i++) {
      text.append("  - ").append(some(4)).append('\n');
    }
    text.append("stage: any\nfor: [adult]\ntubes: [feeding]\n---\n");
    for (int i = 0; i < 5; i++) {
      text.append("## ").append(some(3)).append("\n").append(some(50)).append(".\n\n");
    }
    Article article =
        new ArticleReader("bench")
            .read(SourceText.of("a.md", text.toString()))
            .match(
                good -> good,
                errors -> {
                  throw new IllegalStateException(errors.get(0).render());
                });
    return new FilledArticle(article, article.body().value());
  }

  private String query() {
    return some(2 + chance.nextInt(4));
  }

  private String some(int count) {
    List<String> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      // Squared, so that a few words are common and most are rare, as in any text.
      double at = chance.nextDouble();
      some.add(words.get((int) (at * at * WORDS_KNOWN)));
    }
    return String.join(" ", some);
  }

  private String invented() {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < 2 + chance.nextInt(3); i++) {
      word.append("bdfgklmnprst".charAt(chance.nextInt(12)))
          .append("aeiou".charAt(chance.nextInt(5)));
    }
    return word.toString();
  }

  private static long millis(long nanos) {
    return nanos / 1_000_000;
  }

  private static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
