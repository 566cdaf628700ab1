package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tidemark.source.Located;

/**
 * An article as the index knows it.
 *
 * @param article the article
 * @param sections its filled text
 */
record Entry(Article article, List<Section> sections) {
  static Entry of(FilledArticle filled) {
    return new Entry(filled.article(), PlainText.sections(filled.markdown()));
  }

  /** The title and the questions that it answers. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(article.title());
    article.answers().stream().map(Located::value).forEach(lines::add);
    return lines;
  }

  /** The answer itself: what stands before the first heading. */
  List<String> firstLines() {
    return sections.stream()
        .filter(s -> s.heading().isEmpty())
        .flatMap(s -> s.blocks().stream())
        .toList();
  }

  List<String> headings() {
    return sections.stream().map(Section::heading).filter(h -> !h.isEmpty()).toList();
  }

  List<String> body() {
    return sections.stream()
        .filter(s -> !s.heading().isEmpty())
        .flatMap(s -> s.blocks().stream())
        .toList();
  }

  /** Everything in it, once. */
  Stream<String> texts() {
    return Stream.of(lines(), firstLines(), headings(), body()).flatMap(List::stream);
  }
}
