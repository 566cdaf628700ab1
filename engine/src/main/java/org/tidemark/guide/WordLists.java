package org.tidemark.guide;

import java.util.List;
import java.util.stream.Stream;
import org.tidemark.source.Located;

/** Every text that a word list holds. */
final class WordLists {
  private WordLists() {}

  static List<String> texts(Words words) {
    Stream<Located<String>> groups =
        Stream.of(words.same(), words.apart(), words.spelling())
            .flatMap(List::stream)
            .flatMap(group -> group.phrases().stream());
    Stream<Located<String>> signs =
        Stream.of(words.urgent(), words.scope())
            .flatMap(List::stream)
            .flatMap(sign -> sign.phrases().stream());
    Stream<Located<String>> areas =
        words.elsewhere().stream().flatMap(area -> area.phrases().stream());
    return Stream.of(groups, signs, areas, words.keep().stream(), words.light().stream())
        .flatMap(texts -> texts)
        .map(Located::value)
        .toList();
  }
}
