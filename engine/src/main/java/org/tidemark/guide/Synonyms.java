package org.tidemark.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.analysis.synonym.SynonymMap;
import org.apache.lucene.util.CharsRef;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** Turns groups of phrases into rules that work both ways, and tries every rule out. */
final class Synonyms {
  private final GuideAnalyzer texts;
  private final List<Map<List<String>, Located<String>>> groups = new ArrayList<>();

  private Synonyms(GuideAnalyzer texts, Words words, Problems problems) {
    this.texts = texts;
    words.same().forEach(group -> groups.add(cut(group, problems)));
  }

  /** The chain for queries; a rule that would never do anything is reported. */
  static GuideAnalyzer chain(GuideAnalyzer texts, Words words, Problems problems) {
    Synonyms synonyms = new Synonyms(texts, words, problems);
    if (synonyms.groups.stream().allMatch(group -> group.size() < 2)) {
      return texts;
    }
    GuideAnalyzer queries = texts.with(synonyms.map());
    synonyms.tryOut(queries, problems);
    return queries;
  }

  /** Phrases of one group, cut into words; those that come out alike need only one rule. */
  private Map<List<String>, Located<String>> cut(Words.Group group, Problems problems) {
    Map<List<String>, Located<String>> cut = new LinkedHashMap<>();
    for (Located<String> phrase : group.phrases()) {
      List<String> words = Terms.words(texts, phrase.value());
      if (words.isEmpty()) {
        problems.add(dead(phrase, "has no word in it"));
      } else {
        cut.putIfAbsent(words, phrase);
      }
    }
    return cut;
  }

  private SynonymMap map() {
    SynonymMap.Builder map = new SynonymMap.Builder(true);
    for (Map<List<String>, Located<String>> group : groups) {
      for (List<String> from : group.keySet()) {
        group.keySet().stream()
            .filter(to -> !to.equals(from))
            .forEach(to -> map.add(chars(from), chars(to), true));
      }
    }
    try {
      return map.build();
    } catch (IOException impossible) {
      throw new UncheckedIOException("rules in memory could not be built", impossible);
    }
  }

  private static CharsRef chars(List<String> words) {
    return new CharsRef(String.join(String.valueOf(SynonymMap.WORD_SEPARATOR), words));
  }

  /** Types every phrase and looks whether the others of its group come out. */
  private void tryOut(GuideAnalyzer queries, Problems problems) {
    for (Map<List<String>, Located<String>> group : groups) {
      group.forEach(
          (from, phrase) -> {
            List<List<String>> found = Segments.of(queries, phrase.value()).readings();
            group.keySet().stream()
                .filter(to -> !found.contains(to))
                .findFirst()
                .ifPresent(
                    to ->
                        problems.add(
                            dead(phrase, "does not lead to `" + String.join(" ", to) + "`")));
          });
    }
  }

  private static Diagnostic dead(Located<String> phrase, String why) {
    return Diagnostic.error(
            DiagnosticCode.DEAD_WORD, phrase.span(), "`" + phrase.value() + "` " + why)
        .help("a rule that never does anything misleads whoever relies on it; reword or delete it");
  }
}
