package org.tidemark.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.tidemark.guide.Article;
import org.tidemark.guide.ArticleReader;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.Words;
import org.tidemark.guide.WordsReader;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** The articles and words of this module, read for its tests. */
final class Shelf {
  private Shelf() {}

  static List<FilledArticle> filled() {
    return articles().stream().map(a -> new FilledArticle(a, bare(a.body().value()))).toList();
  }

  static List<Article> articles() {
    ArticleReader reader = new ArticleReader("Tidemark");
    try (Stream<Path> files = Files.list(folder("guidance"))) {
      return files
          .filter(file -> file.toString().endsWith(".md"))
          .sorted()
          .map(file -> good(reader.read(source(file))))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static Words words() {
    return good(new WordsReader().read(source(folder("words").resolve("words.yaml"))));
  }

  /** The text with neither directives nor values: what search sees does not hang on one policy. */
  private static String bare(String template) {
    return template
        .replaceAll("#(?:if|elseif|foreach)\\([^)]*\\)|#\\{?(?:else|end)\\}?", " ")
        .replaceAll("\\$[a-z_.]+[a-z_]", "5.5");
  }

  static Path folder(String name) {
    URL url = Objects.requireNonNull(Shelf.class.getResource("/org/tidemark/content/" + name));
    try {
      return Path.of(url.toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static SourceText source(Path file) {
    try {
      return SourceText.of(
          file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8));
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
}
