package org.tidemark.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.util.BytesRef;

/** Scores entries against the pieces of a query: the whole article, and its best single line. */
final class Ranking {
  private static final int DEPTH = 300;
  private static final double LINE_COUNTS = 1.5;
  private static final double LIGHT = 0.15;
  private static final double DENIAL = 0.5;

  private final IndexSearcher searcher;
  private final int entries;

  Ranking(DirectoryReader reader, int entries) {
    this.searcher = new IndexSearcher(reader);
    this.searcher.setSimilarity(new MeaningSimilarity());
    this.searcher.setQueryCache(null);
    this.entries = entries;
  }

  /**
   * The pieces of a query with what each is worth. Light words count in full when all are light.
   */
  List<Piece> weigh(Segments segments, Phrases phrases) {
    boolean allLight = segments.typed().stream().allMatch(phrases::isLight);
    List<Piece> pieces = new ArrayList<>();
    for (Segments.Segment segment : segments.all()) {
      boolean light = segment.typed().stream().allMatch(phrases::isLight);
      double rarity = rarity(segment);
      pieces.add(new Piece(segment, light && !allLight ? rarity * LIGHT : rarity, light));
    }
    pieces.addAll(denials(segments.all()));
    return pieces;
  }

  /**
   * What is said not to be so, as a piece of its own: "not feed" is rare where both words are not.
   */
  private List<Piece> denials(List<Segments.Segment> all) {
    List<Piece> denials = new ArrayList<>();
    for (int i = 0; i + 1 < all.size(); i++) {
      List<String> pair = List.of(last(all.get(i)), all.get(i + 1).typed().get(0));
      if (Negation.is(pair.get(0))) {
        Segments.Segment denial = new Segments.Segment(pair, List.of());
        double rarity = rarity(denial);
        denials.add(new Piece(denial, rarity * DENIAL, true));
      }
    }
    return denials.stream().filter(Piece::known).toList();
  }

  private static String last(Segments.Segment segment) {
    return segment.typed().get(segment.typed().size() - 1);
  }

  /** Every word that an article holds, as the index knows it. */
  Set<String> words() {
    Set<String> words = new HashSet<>();
    try {
      for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
        Terms terms = leaf.reader().terms(Shelves.ALL);
        TermsEnum all = terms == null ? TermsEnum.EMPTY : terms.iterator();
        for (BytesRef word = all.next(); word != null; word = all.next()) {
          words.add(word.utf8ToString());
        }
      }
    } catch (IOException impossible) {
      throw unreadable(impossible);
    }
    return words;
  }

  private double rarity(Segments.Segment segment) {
    try {
      int holding = searcher.count(Queries.holding(Shelves.ALL, segment));
      return holding == 0 ? 0 : Math.log(1 + (entries - holding + 0.5) / (holding + 0.5));
    } catch (IOException impossible) {
      throw unreadable(impossible);
    }
  }

  /** Scores by the number of the entry. */
  Map<Integer, Double> score(List<Piece> pieces, GuidanceFilter filter) {
    Map<Integer, Double> scores = new HashMap<>();
    List<Piece> known = pieces.stream().filter(Piece::known).toList();
    if (!known.isEmpty()) {
      best(Shelves.ALL, known, filter).forEach((entry, s) -> scores.merge(entry, s, Double::sum));
      best(Shelves.LINE, known, filter)
          .forEach((entry, s) -> scores.merge(entry, s * LINE_COUNTS, Double::sum));
    }
    return scores;
  }

  private Map<Integer, Double> best(String field, List<Piece> pieces, GuidanceFilter filter) {
    Query query =
        new BooleanQuery.Builder()
            .add(Queries.scoring(field, pieces), Occur.MUST)
            .add(Tags.passing(filter), Occur.FILTER)
            .build();
    Map<Integer, Double> best = new HashMap<>();
    try {
      for (ScoreDoc doc : searcher.search(query, DEPTH).scoreDocs) {
        best.merge(entry(doc.doc), (double) doc.score, Math::max);
      }
    } catch (IOException impossible) {
      throw unreadable(impossible);
    }
    return best;
  }

  private int entry(int document) throws IOException {
    NumericDocValues numbers =
        searcher.getIndexReader().leaves().get(0).reader().getNumericDocValues(Shelves.ENTRY);
    if (numbers == null || !numbers.advanceExact(document)) {
      throw new IllegalStateException("a document without its entry: " + document);
    }
    return (int) numbers.longValue();
  }

  private static UncheckedIOException unreadable(IOException impossible) {
    return new UncheckedIOException("an index in memory could not be read", impossible);
  }
}
