package org.tidemark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tidemark.guide.Ask;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.GuidanceIndex;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.Hit;
import org.tidemark.guide.PolicyContext;

/** The search over the real articles against the judged queries of judged-queries.tsv. */
class GuidanceQualityTest {
  private static final double NDCG = 0.85;
  private static final double FIRST = 0.75;
  private static final double IN_FIVE = 0.97;

  private static Quality quality;
  private static Quality baseline;

  @BeforeAll
  static void measure() {
    List<FilledArticle> articles = Shelf.filled();
    GuidanceSearch search =
        Shelf.good(GuidanceIndex.of(articles, Shelf.words()))
            .search(PolicyContext.of("example", "1").cutOff(new BigDecimal("5.5")));
    List<JudgedQuery> queries = JudgedQuery.all();
    quality = Quality.of(queries, search(search));
    baseline = Quality.of(queries, new PlainBaseline(articles)::find);
    report(queries, search(search));
  }

  private static Function<String, List<String>> search(GuidanceSearch search) {
    return typed -> search.find(Ask.of(typed)).hits().stream().map(Hit::article).toList();
  }

  private static void report(List<JudgedQuery> queries, Function<String, List<String>> search) {
    List<JudgedQuery> odd = queries.stream().filter(JudgedQuery::odd).toList();
    List<JudgedQuery> even = queries.stream().filter(query -> !query.odd()).toList();
    System.out.println(baseline.row("English analyser and BM25"));
    System.out.println(quality.row("this search"));
    System.out.println(Quality.of(odd, search).row("  odd numbers, looked at in tuning"));
    System.out.println(Quality.of(even, search).row("  even numbers, only counted"));
    quality.misses().forEach(System.out::println);
  }

  @Test
  void everyJudgedQueryIsTried() {
    assertEquals(208, quality.queries());
  }

  @Test
  void theRankingIsGood() {
    assertTrue(quality.ndcg() >= NDCG, () -> quality.row("nDCG"));
  }

  @Test
  void theBestTopicIsMostlyFirst() {
    assertTrue(quality.first() >= FIRST, () -> quality.row("first"));
  }

  @Test
  void theBestTopicIsAlmostAlwaysAmongTheFirstFive() {
    assertTrue(quality.inFive() >= IN_FIVE, () -> quality.row("in five"));
  }

  @Test
  void noTopicComesFirstThatMustNot() {
    assertEquals(0, quality.avoided(), () -> String.join("\n", quality.misses()));
  }

  @Test
  void theSearchIsBetterThanLuceneByItself() {
    assertTrue(quality.ndcg() > baseline.ndcg() + 0.05, () -> baseline.row("baseline"));
    assertTrue(quality.first() > baseline.first() + 0.05, () -> baseline.row("baseline"));
  }

  /** Worked by hand: gains 3 and 1 at ranks 2 and 1 of an ideal 3, 1. */
  @Test
  void theMeasureIsRight() {
    JudgedQuery query = new JudgedQuery("Q1", "x", java.util.Map.of("a", 2, "b", 1), List.of());
    assertEquals(1.0, Quality.ndcg(query, List.of("a", "b")), 1e-9);
    assertEquals(
        (1 + 3 / 1.5849625007) / (3 + 1 / 1.5849625007),
        Quality.ndcg(query, List.of("b", "a")),
        1e-9);
    assertEquals(0.0, Quality.ndcg(query, List.of("c")), 1e-9);
  }
}
