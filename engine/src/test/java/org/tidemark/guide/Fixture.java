package org.tidemark.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** Small articles and words to search in. */
final class Fixture {
  private static final GuidanceIndex INDEX = good(GuidanceIndex.of(articles(), words()));

  private Fixture() {}

  static GuidanceSearch search() {
    return INDEX.search(policy());
  }

  static GuidanceIndex index() {
    return INDEX;
  }

  static PolicyContext policy() {
    return PolicyContext.of("example-general-adult", "3")
        .cutOff(new BigDecimal("5.5"))
        .answers(number -> Optional.of("at " + number.value() + " this policy was asked"));
  }

  /** The names of the first hits for what somebody types. */
  static List<String> find(String typed) {
    return names(search().find(Ask.of(typed)));
  }

  static List<String> names(Found found) {
    return found.hits().stream().map(Hit::article).toList();
  }

  static Words words() {
    return good(new WordsReader().read(SourceText.of("words.yaml", resource("words.yaml"))));
  }

  static Words words(String yaml) {
    return good(new WordsReader().read(SourceText.of("words.yaml", "words: x\n" + yaml)));
  }

  static List<FilledArticle> articles() {
    List<FilledArticle> articles = new ArrayList<>();
    for (String block : resource("articles.txt").split("\n\n", -1)) {
      if (!block.startsWith("#") && !block.isBlank()) {
        articles.add(filled(block.strip()));
      }
    }
    return articles;
  }

  private static FilledArticle filled(String block) {
    List<String> lines = block.lines().toList();
    String[] cells = lines.get(0).split("\\|", -1);
    List<String> answers = lines.stream().filter(l -> l.startsWith("- ")).toList();
    List<String> body = lines.stream().skip(1).filter(l -> !l.startsWith("- ")).toList();
    String flags = cells[5];
    return article(
        String.join(
            "\n",
            "article: " + cells[0].strip(),
            "title: \"" + cells[1].strip() + "\"",
            "answers:",
            String.join("\n", answers.stream().map(a -> "  - \"" + a.substring(2) + "\"").toList()),
            "stage: " + cells[2].strip(),
            "for: [" + cells[3].strip() + "]",
            "tubes: [" + cells[4].strip() + "]",
            "urgency: " + (flags.contains("act-now") ? "act-now" : "routine"),
            "pointer: \"" + (flags.contains("pointer") ? "yes" : "no") + "\""),
        String.join("\n", body));
  }

  static FilledArticle article(String head, String body) {
    SourceText file = SourceText.of("test.md", "---\n" + head + "\n---\n" + body + "\n");
    Article article = good(new ArticleReader("for tests").read(file));
    return new FilledArticle(article, article.body().value());
  }

  /** An article of which only the name, a question and the text matter. */
  static FilledArticle simple(String id, String answer, String body) {
    return article(
        "article: "
            + id
            + "\ntitle: \""
            + id
            + "\"\nanswers: [\""
            + answer
            + "\"]\nstage: any\nfor: [adult]\ntubes: [feeding]",
        body);
  }

  static String resource(String name) {
    try (InputStream in = Fixture.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static <T> T good(Loaded<T> loaded) {
    return loaded.match(
        value -> value,
        errors -> {
          throw new AssertionError(
              String.join("\n", errors.stream().map(Diagnostic::render).toList()));
        });
  }

  static List<String> errors(Loaded<?> loaded) {
    return loaded.match(
        value -> {
          throw new AssertionError("read without an error: " + value);
        },
        errors -> errors.stream().map(d -> d.at() + ": " + d.message()).toList());
  }
}
