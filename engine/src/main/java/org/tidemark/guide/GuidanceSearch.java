package org.tidemark.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers typed questions with places in the guidance. */
public final class GuidanceSearch {
  /** Below this share of words that any article knows, a query is about something else. */
  private static final double KNOWN_SHARE = 0.5;

  private static final Comparator<Placed> BEST_FIRST =
      Comparator.comparingDouble((Placed placed) -> -placed.score())
          .thenComparing(placed -> placed.entry().article().name());

  private final GuidanceIndex index;
  private final PolicyContext policy;

  GuidanceSearch(GuidanceIndex index, PolicyContext policy) {
    this.index = index;
    this.policy = policy;
  }

  /** The articles that answer best. */
  public Found find(Ask ask) {
    QueryReading reading = index.reader().read(ask.text());
    List<String> meanings = index.phrases().meanings(reading.read());
    List<Piece> pieces =
        index.ranking().weigh(Segments.of(index.queries(), reading.read()), index.phrases());
    Map<String, String> first = index.routes().first(meanings);
    Optional<String> note = first.isEmpty() ? outside(meanings, pieces) : Optional.empty();
    if (note.isPresent()) {
      return new Found(reading, Optional.empty(), List.of(), note);
    }
    List<Placed> placed = place(ask, reading, pieces, first);
    Numbers numbers = new Numbers(index, policy, reading, ask.filter(), first.keySet());
    return new Found(
        reading,
        numbers.says(),
        hits(ask, numbers, pieces, placed),
        emptyNote(placed).or(numbers::whyNot));
  }

  /** Up to so many titles and questions that begin as was typed. */
  public List<String> suggest(String begun, int limit) {
    return index.suggest(begun, limit);
  }

  private static Optional<String> emptyNote(List<Placed> placed) {
    return placed.isEmpty() ? Optional.of("No guidance holds these words.") : Optional.empty();
  }

  private Optional<String> outside(List<String> meanings, List<Piece> pieces) {
    if (index.routes().elsewhere(meanings)) {
      return Optional.of("This guidance is about nasogastric tubes and does not cover that.");
    }
    List<Piece> telling = pieces.stream().filter(Piece::telling).toList();
    List<Piece> strange = telling.stream().filter(piece -> !piece.known()).toList();
    if (strange.size() > telling.size() * (1 - KNOWN_SHARE)) {
      return Optional.of(
          "No guidance holds: " + String.join(", ", strange.stream().map(Piece::typed).toList()));
    }
    return Optional.empty();
  }

  private List<Placed> place(
      Ask ask, QueryReading reading, List<Piece> pieces, Map<String, String> first) {
    Map<Integer, Placed> placed = new HashMap<>();
    index
        .ranking()
        .score(pieces, ask.filter())
        .forEach((n, score) -> placed.put(n, new Placed(index.entry(n), score, List.of())));
    double best = placed.values().stream().mapToDouble(Placed::score).max().orElse(1);
    raiseForNumbers(reading, placed, best);
    raiseFirst(first, placed, best);
    return placed.values().stream().sorted(BEST_FIRST).limit(ask.limit()).toList();
  }

  private void raiseForNumbers(QueryReading reading, Map<Integer, Placed> placed, double best) {
    index
        .routes()
        .numbers(reading.numbers(), policy.phCutOff())
        .forEach(
            (article, share) ->
                placed.computeIfPresent(
                    index.number(article),
                    (n, p) -> p.raised(p.score() + share * best, "moved up for the number typed")));
  }

  private void raiseFirst(Map<String, String> first, Map<Integer, Placed> placed, double best) {
    double height = 3 * best + first.size();
    for (Map.Entry<String, String> one : first.entrySet()) {
      int number = index.number(one.getKey());
      Placed now = placed.getOrDefault(number, new Placed(index.entry(number), 0, List.of()));
      placed.put(number, now.raised(height, one.getValue()));
      height--;
    }
  }

  private List<Hit> hits(Ask ask, Numbers numbers, List<Piece> pieces, List<Placed> placed) {
    SnippetFinder snippets = new SnippetFinder(index.texts(), pieces);
    Reasons reasons = new Reasons(index.texts(), numbers.reading(), pieces);
    List<Hit> hits = new ArrayList<>();
    for (Placed one : placed) {
      hits.add(hit(one, snippets, numbers, ask.explain() ? reasons.of(one) : List.of()));
    }
    return hits;
  }

  private Hit hit(Placed placed, SnippetFinder snippets, Numbers numbers, List<String> reasons) {
    Article article = placed.entry().article();
    SnippetFinder.Found found = snippets.find(placed.entry());
    return new Hit(
        article.name(),
        article.title(),
        found.section(),
        found.snippet(),
        policy.id(),
        policy.edition(),
        article.origin(),
        article.id().span(),
        article.actNow(),
        article.pointer(),
        numbers.says(article),
        placed.score(),
        reasons);
  }
}
