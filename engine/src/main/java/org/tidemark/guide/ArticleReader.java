package org.tidemark.guide;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Worded;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Reads one article: fields between two lines of dashes, then Markdown. */
public final class ArticleReader {
  private final String origin;

  /**
   * @param origin the name of the collection that the articles come from; every hit shows it
   */
  public ArticleReader(String origin) {
    this.origin = origin;
  }

  /** Reads an article; a notice that withdraws one is refused here. */
  public Loaded<Article> read(SourceText file) {
    return entry(file).match(this::onlyArticle, Loaded::broken);
  }

  private Loaded<Article> onlyArticle(ShelfEntry entry) {
    if (entry instanceof ShelfEntry.Added added) {
      return Loaded.good(added.article());
    }
    return Loaded.broken(
        Diagnostic.error(
            DiagnosticCode.WRONG_SHAPE,
            entry.id().span(),
            "this withdraws an article, and an article is needed here"));
  }

  /** Reads an article or the notice that withdraws one. */
  Loaded<ShelfEntry> entry(SourceText file) {
    return FrontMatter.split(file).match(this::parts, Loaded::broken);
  }

  private Loaded<ShelfEntry> parts(FrontMatter parts) {
    return new YamlReader()
        .read(parts.head())
        .match(node -> fields(node, parts.body()), Loaded::broken);
  }

  private Loaded<ShelfEntry> fields(YamlNode node, Located<String> body) {
    Problems problems = new Problems();
    Entries entries = Entries.of(node, "the article", problems);
    ShelfEntry entry =
        entries.either("withdrawn", "yes", "no")
            ? new ShelfEntry.Withdrawn(entries.text("article"), entries.text("why").value())
            : new ShelfEntry.Added(article(entries, body, problems));
    entries.done();
    return problems.conclude(() -> entry);
  }

  private Article article(Entries entries, Located<String> body, Problems problems) {
    if (body.value().isBlank()) {
      problems.add(
          Diagnostic.error(DiagnosticCode.EMPTY_VALUE, body.span(), "the article has no text"));
    }
    return new Article(
        entries.text("article"),
        entries.text("title").value(),
        entries.someTexts("answers"),
        entries.word(entries.text("stage"), Stage.class).orElse(Stage.ANY),
        words(entries, "for", Population.class),
        words(entries, "tubes", TubeKind.class),
        entries.either("urgency", "act-now", "routine"),
        entries.either("pointer", "yes", "no"),
        entries.texts("see-also"),
        entries.texts("sources"),
        reviewBy(entries, problems),
        body,
        origin);
  }

  private static <E extends Enum<E> & Worded> Set<E> words(
      Entries entries, String key, Class<E> type) {
    Set<E> found = new LinkedHashSet<>();
    List<Located<String>> texts = entries.someTexts(key);
    texts.forEach(text -> entries.word(text, type).ifPresent(found::add));
    return found;
  }

  private static Optional<LocalDate> reviewBy(Entries entries, Problems problems) {
    return entries.optionalText("review-by").flatMap(text -> date(text, problems));
  }

  private static Optional<LocalDate> date(Located<String> text, Problems problems) {
    try {
      return Optional.of(LocalDate.parse(text.value()));
    } catch (DateTimeException notADay) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_DATE, text.span(), "`" + text.value() + "` is not a day")
              .help("write the year, the month and the day, such as 2027-11-30"));
      return Optional.empty();
    }
  }
}
