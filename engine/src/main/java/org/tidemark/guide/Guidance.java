package org.tidemark.guide;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Articles and words together: those that come with Tidemark and those of a hospital.
 *
 * @param articles the articles that count, by name
 * @param words the words
 * @param withdrawn articles that a hospital took away, each with its reason
 */
public record Guidance(List<Article> articles, Words words, Map<String, String> withdrawn) {
  public Guidance {
    articles = List.copyOf(articles);
    withdrawn = Collections.unmodifiableMap(new LinkedHashMap<>(withdrawn));
  }

  static Loaded<Guidance> of(List<ShelfEntry> entries, Words words) {
    return new Guidance(List.of(), Words.NONE, Map.of()).with(entries, words);
  }

  /**
   * This guidance as a hospital's own files change it: an article of a known name replaces that
   * one, a new name adds one, and a notice withdraws one.
   */
  Loaded<Guidance> with(List<ShelfEntry> entries, Words more) {
    Problems problems = new Problems();
    Map<String, Article> shelf = new TreeMap<>();
    articles.forEach(article -> shelf.put(article.name(), article));
    Map<String, String> gone = new LinkedHashMap<>(withdrawn);
    Map<String, Located<String>> said = new LinkedHashMap<>();
    for (ShelfEntry entry : entries) {
      sayOnce(said, entry, problems);
      guardEmergencies(shelf.get(entry.id().value()), entry, problems);
      if (entry instanceof ShelfEntry.Added added) {
        shelf.put(added.article().name(), added.article());
        gone.remove(added.article().name());
      } else if (entry instanceof ShelfEntry.Withdrawn notice) {
        withdraw(shelf, gone, notice, problems);
      }
    }
    return problems.conclude(
        () -> new Guidance(List.copyOf(shelf.values()), words.and(more), gone).unlinked());
  }

  private static void sayOnce(
      Map<String, Located<String>> said, ShelfEntry entry, Problems problems) {
    Located<String> first = said.putIfAbsent(entry.id().value(), entry.id());
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  entry.id().span(),
                  "two files speak of the article `" + entry.id() + "`")
              .and(first.span(), "the other one"));
    }
  }

  /** Words of an emergency must always find an article that says what to do now. */
  private static void guardEmergencies(
      @Nullable Article before, ShelfEntry entry, Problems problems) {
    boolean stays = entry instanceof ShelfEntry.Added added && added.article().actNow();
    if (before != null && before.actNow() && !stays) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.LOOSER_THAN_FLOOR,
                  entry.id().span(),
                  "`" + entry.id() + "` is for emergencies and may only be replaced by one that is")
              .help("keep `urgency: act-now`"));
    }
  }

  private static void withdraw(
      Map<String, Article> shelf,
      Map<String, String> gone,
      ShelfEntry.Withdrawn notice,
      Problems problems) {
    if (shelf.remove(notice.id().value()) == null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DEAD_LINK,
                  notice.id().span(),
                  "no article is called `" + notice.id() + "`, so it cannot be withdrawn")
              .help(Entries.suggest(notice.id().value(), List.copyOf(shelf.keySet()))));
    }
    gone.put(notice.id().value(), notice.why());
  }

  /** What points at a withdrawn article is left out. */
  private Guidance unlinked() {
    return new Guidance(
        articles.stream().map(this::unlinked).toList(),
        words.without(withdrawn.keySet()),
        withdrawn);
  }

  private Article unlinked(Article article) {
    List<Located<String>> links =
        article.seeAlso().stream().filter(to -> !withdrawn.containsKey(to.value())).toList();
    return article.seeAlso(links);
  }
}
