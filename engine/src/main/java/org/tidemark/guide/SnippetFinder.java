package org.tidemark.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Finds the piece of an article's text that fits a query best. It copies and never rewrites. */
final class SnippetFinder {
  /**
   * A snippet and the heading over it.
   *
   * @param section the heading
   * @param snippet the snippet
   */
  record Found(String section, Snippet snippet) {}

  /** Words that must follow one another, and what finding them is worth. */
  private record Wanted(List<String> words, double worth, int piece) {}

  private final GuideAnalyzer texts;
  private final List<Wanted> wanted = new ArrayList<>();

  SnippetFinder(GuideAnalyzer texts, List<Piece> pieces) {
    this.texts = texts;
    boolean anyTelling = pieces.stream().anyMatch(piece -> !piece.light());
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (!anyTelling || !piece.light()) {
        want(piece, i);
      }
    }
    wanted.sort(Comparator.comparingInt((Wanted w) -> -w.words().size()));
  }

  private void want(Piece piece, int number) {
    piece.readings().forEach(reading -> wanted.add(new Wanted(reading, piece.weight(), number)));
    if (piece.segment().typed().size() > 1) {
      piece
          .segment()
          .typed()
          .forEach(word -> wanted.add(new Wanted(List.of(word), piece.weight() / 2, number)));
    }
  }

  Found find(Entry entry) {
    if (entry.article().actNow() && !entry.sections().isEmpty()) {
      return opening(entry.sections().get(0));
    }
    Found best = new Found("", new Snippet("", List.of()));
    double most = -1;
    for (Section section : entry.sections()) {
      for (String block : section.blocks()) {
        Candidate candidate = candidate(block);
        if (candidate.worth() > most) {
          most = candidate.worth();
          best = new Found(section.heading(), new Snippet(block, candidate.marks()));
        }
      }
    }
    return best;
  }

  /** When minutes count the first thing to do is shown, whatever was asked. */
  private Found opening(Section section) {
    String block = section.blocks().isEmpty() ? "" : section.blocks().get(0);
    return new Found(section.heading(), new Snippet(block, candidate(block).marks()));
  }

  private record Candidate(List<Snippet.Mark> marks, double worth) {}

  private Candidate candidate(String block) {
    List<Terms.Term> terms = Terms.of(texts, block);
    List<String> words = terms.stream().map(Terms.Term::word).toList();
    List<Snippet.Mark> marks = new ArrayList<>();
    Set<Integer> counted = new HashSet<>();
    double worth = 0;
    for (int at = 0; at < words.size(); ) {
      Wanted found = startingAt(words, at);
      if (found == null) {
        at++;
        continue;
      }
      int last = at + found.words().size() - 1;
      marks.add(new Snippet.Mark(terms.get(at).start(), terms.get(last).end()));
      worth += counted.add(found.piece()) ? found.worth() : 0;
      at = last + 1;
    }
    return new Candidate(marks, worth);
  }

  private @Nullable Wanted startingAt(List<String> words, int at) {
    return wanted.stream()
        .filter(w -> at + w.words().size() <= words.size())
        .filter(w -> words.subList(at, at + w.words().size()).equals(w.words()))
        .findFirst()
        .orElse(null);
  }
}
