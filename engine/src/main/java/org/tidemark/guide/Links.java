package org.tidemark.guide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** Looks whether every name of an article that is pointed at exists, and exists once. */
final class Links {
  private final Map<String, Article> known = new HashMap<>();
  private final Problems problems;

  private Links(Problems problems) {
    this.problems = problems;
  }

  static void check(List<Article> articles, Words words, Problems problems) {
    Links links = new Links(problems);
    articles.forEach(links::learn);
    articles.forEach(article -> article.seeAlso().forEach(links::follow));
    words.urgent().forEach(sign -> links.follow(sign.article()));
    words.scope().forEach(sign -> links.follow(sign.article()));
    words.numbers().forEach(route -> links.follow(route.within()));
    words.numbers().forEach(route -> route.above().forEach(links::follow));
  }

  private void learn(Article article) {
    Article first = known.putIfAbsent(article.name(), article);
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  article.id().span(),
                  "two articles are called `" + article.name() + "`")
              .and(first.id().span(), "the other one"));
    }
  }

  private void follow(Located<String> name) {
    if (!known.containsKey(name.value())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DEAD_LINK, name.span(), "no article is called `" + name + "`")
              .help(Entries.suggest(name.value(), known.keySet().stream().sorted().toList())));
    }
  }
}
