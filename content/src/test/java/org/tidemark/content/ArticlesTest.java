package org.tidemark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.guide.Article;
import org.tidemark.load.BibliographyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Standing;
import org.tidemark.source.Located;
import org.tidemark.yaml.YamlReader;

/**
 * What is asked of every article: no number of its own, a source for every claim, plain words, and
 * nothing that leads nowhere.
 */
class ArticlesTest {
  /** The grade of school English that an article may ask for at most. */
  private static final double GRADE = 8.0;

  private static final Pattern NUMBER_WITH_UNIT =
      Pattern.compile(
          "\\b[0-9]+(?:[.,][0-9]+)?\\s*(?:mL|ml|cm|mm|h|hours?|min|minutes?|seconds?|s|degrees?|°|Fr|Ch|days?|weeks?|kg|g|%)(?![a-z])|\\bpH\\s*(?:of\\s*)?[0-9]");

  private static final Pattern CITATION = Pattern.compile("\\[([^\\]]+)\\]");
  private static final Pattern ID = Pattern.compile("[A-Z]{2,4}-[0-9]+[a-z]?");

  private static final List<Article> ARTICLES = Shelf.articles();
  private static final Bibliography SOURCES = bibliography();

  private static Bibliography bibliography() {
    Path file = Shelf.folder("sources").resolve("bibliography.yaml");
    return Shelf.good(new YamlReader().read(file, BibliographyLoader::load));
  }

  /**
   * The topics that this project set itself, in topics.txt; each has one article and there is no
   * other.
   */
  @Test
  void everyTopicHasItsArticle() throws IOException {
    Set<String> wanted = new TreeSet<>();
    try (Stream<String> lines =
        java.nio.file.Files.lines(Path.of("src/test/resources/org/tidemark/content/topics.txt"))) {
      lines.filter(l -> !l.isBlank() && !l.startsWith("#")).forEach(wanted::add);
    } catch (UncheckedIOException unreadable) {
      throw unreadable.getCause();
    }
    Set<String> have = new TreeSet<>();
    ARTICLES.forEach(a -> have.add(a.name()));
    assertEquals(60, wanted.size());
    assertEquals(wanted, have);
  }

  @Test
  void noNumberWithAUnitIsWrittenInAnArticle() {
    List<String> found = new ArrayList<>();
    for (Article article : ARTICLES) {
      Matcher number = NUMBER_WITH_UNIT.matcher(article.body().value());
      while (number.find()) {
        found.add(article.name() + ": " + number.group());
      }
    }
    assertEquals(List.of(), found);
  }

  /** The check itself finds what it is there to find. */
  @Test
  void theNumberCheckSeesNumbers() {
    for (String text :
        List.of(
            "Wait 60 minutes.",
            "pH 5.5 or less",
            "Push 10 mL of air",
            "at 30 degrees",
            "2-3 cm",
            "an 8 Fr tube",
            "within 24 h")) {
      assertEquals(true, NUMBER_WITH_UNIT.matcher(text).find(), text);
    }
    assertEquals(false, NUMBER_WITH_UNIT.matcher("1. Stop the feed.").find());
  }

  @Test
  void everyCitationIsInTheBibliographyAndNoneRestsOnMemory() {
    List<String> wrong = new ArrayList<>();
    for (Article article : ARTICLES) {
      Set<String> listed = new TreeSet<>();
      article.sources().stream().map(Located::value).forEach(listed::add);
      Set<String> used = citations(article.body().value());
      if (!listed.equals(used)) {
        wrong.add(article.name() + ": `sources` says " + listed + ", the text uses " + used);
      }
      used.stream().filter(id -> !sound(id)).forEach(id -> wrong.add(article.name() + ": " + id));
    }
    assertEquals(List.of(), wrong);
  }

  private static Set<String> citations(String body) {
    Set<String> ids = new TreeSet<>();
    Matcher brackets = CITATION.matcher(body);
    while (brackets.find()) {
      Matcher id = ID.matcher(brackets.group(1));
      while (id.find()) {
        ids.add(id.group());
      }
    }
    return ids;
  }

  private static boolean sound(String id) {
    Optional<Bibliography.Entry> entry = SOURCES.entry(id);
    return entry.isPresent() && entry.get().standing() != Standing.FROM_MEMORY;
  }

  /**
   * A step or a paragraph that says what to do, or why, says where that is from, or that it is
   * common practice.
   */
  @Test
  void everyStepSaysWhereItComesFrom() {
    List<String> bare = new ArrayList<>();
    for (Article article : ARTICLES) {
      if (!article.pointer()) {
        article
            .body()
            .value()
            .lines()
            .filter(l -> l.matches("[0-9]+\\. .*") && !l.contains("#if("))
            .filter(l -> !CITATION.matcher(l).find())
            .forEach(l -> bare.add(article.name() + ": " + l));
      }
    }
    assertEquals(List.of(), bare);
  }

  /**
   * Flesch-Kincaid grade: 0.39 words a sentence + 11.8 syllables a word - 15.59. Source: Kincaid,
   * Fishburne, Rogers and Chissom, Derivation of new readability formulas for Navy enlisted
   * personnel, Research Branch Report 8-75, 1975 (formula from memory).
   */
  @Test
  void everyArticleIsReadEasily() {
    List<String> hard = new ArrayList<>();
    for (Article article : ARTICLES) {
      double grade = Readability.grade(article.body().value());
      if (grade > GRADE) {
        hard.add(article.name() + ": grade " + grade);
      }
    }
    assertEquals(List.of(), hard);
  }

  /** Two sentences counted by hand: 14 words, 2 sentences, 16 syllables. */
  @Test
  void theReadabilityFormulaIsRight() {
    double expected = 0.39 * 14 / 2 + 11.8 * 16 / 14 - 15.59;
    assertEquals(
        expected,
        Readability.grade("Stop the feed at once. Turn the patient onto the left side and wait."),
        1e-9);
  }

  @Test
  void noArticleLeadsNowhereAndNoTitleOrQuestionStandsTwice() {
    Set<String> names = new TreeSet<>();
    ARTICLES.forEach(a -> names.add(a.name()));
    List<String> wrong = new ArrayList<>();
    Set<String> said = new TreeSet<>();
    for (Article article : ARTICLES) {
      article.seeAlso().stream()
          .map(Located::value)
          .filter(s -> !names.contains(s))
          .forEach(s -> wrong.add(article.name() + " -> " + s));
      if (!said.add(article.title())) {
        wrong.add("title twice: " + article.title());
      }
      article.answers().stream()
          .map(Located::value)
          .filter(q -> !said.add(q))
          .forEach(q -> wrong.add("question twice: " + q));
      if (article.reviewBy().isEmpty()) {
        wrong.add(article.name() + " has no review date");
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** The answer comes first: before any heading stands a short text. */
  @Test
  void theAnswerComesFirst() {
    List<String> wrong =
        ARTICLES.stream()
            .filter(a -> a.body().value().stripLeading().startsWith("#"))
            .map(Article::name)
            .toList();
    assertEquals(List.of(), wrong);
  }
}
