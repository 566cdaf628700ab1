package org.tidemark.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

class ArticleReaderTest {
  private static final String HEAD =
      """
      ---
      article: flush
      title: Flushing
      answers:
        - ng flush how much
      stage: after
      for: [adult, child]
      tubes: [feeding]
      urgency: routine
      pointer: "no"
      see-also: [blocked]
      sources: [LA-25]
      review-by: 2027-11-30
      ---
      """;

  private static Loaded<Article> read(String text) {
    return new ArticleReader("Example General").read(SourceText.of("flush.md", text));
  }

  @Test
  void everyFieldIsRead() {
    Article article = Fixture.good(read(HEAD + "Use water.\n\n## Why\nIt keeps open.\n"));
    assertEquals("flush", article.name());
    assertEquals("Flushing", article.title());
    assertEquals("ng flush how much", article.answers().get(0).value());
    assertEquals(Stage.AFTER, article.stage());
    assertEquals(Set.of(Population.ADULT, Population.CHILD), article.populations());
    assertEquals(Set.of(TubeKind.FEEDING), article.tubes());
    assertEquals("2027-11-30", article.reviewBy().orElseThrow().toString());
    assertEquals("LA-25", article.sources().get(0).value());
    assertEquals("Example General", article.origin());
    assertEquals("Use water.\n\n## Why\nIt keeps open.\n", article.body().value());
    assertEquals(15, article.body().span().line());
  }

  @Test
  void everyProblemOfAFileIsReportedAtItsPlace() {
    String broken =
        HEAD.replace("stage: after", "stage: afterr")
            .replace("sources:", "source:")
            .replace("2027-11-30", "2027-13-30");
    assertEquals(
        List.of(
            "flush.md:6:8: `afterr` is not a word that may stand here",
            "flush.md:12:1: the article has no field `source`",
            "flush.md:13:12: `2027-13-30` is not a day",
            "flush.md:15:1: the article has no text"),
        Fixture.errors(read(broken)));
  }

  @Test
  void whatIsMissingIsNamed() {
    List<String> errors = Fixture.errors(read("---\narticle: x\ntitle: y\n---\nText.\n"));
    assertTrue(errors.contains("flush.md:2:1: the article has no `answers`"), errors::toString);
    assertTrue(errors.contains("flush.md:2:1: the article has no `stage`"), errors::toString);
  }

  @Test
  void aFileWithoutItsTwoLinesOfDashesIsRefused() {
    assertEquals(
        List.of("flush.md:1:1: the file does not begin with `---`"),
        Fixture.errors(read("article: x\n")));
    assertEquals(
        List.of("flush.md:1:1: no second `---` follows"), Fixture.errors(read("---\na: b\n")));
  }

  @Test
  void brokenYamlPointsIntoTheFile() {
    List<String> errors =
        Fixture.errors(read(HEAD.replace("for: [adult, child]", "for: [adult, child") + "Text."));
    assertTrue(errors.get(0).startsWith("flush.md:7:6: a bracket is not closed"), errors::toString);
  }

  @Test
  void dashesInsideTheTextAreText() {
    Article article = Fixture.good(read(HEAD + "One.\n\n---\n\nTwo.\n"));
    assertTrue(article.body().value().contains("Two."));
  }
}
