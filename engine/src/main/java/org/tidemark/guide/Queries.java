package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** Makes Lucene queries from the pieces of a typed one. Nothing typed is ever parsed. */
final class Queries {
  /** A synonym counts almost as much as the word itself. */
  private static final float OTHER_READING = 0.85f;

  /** The words of a phrase, found apart, count this much of the phrase. */
  private static final float SCATTERED = 0.6f;

  private static final double NEIGHBOURS = 0.3;
  private static final int ROOM_BETWEEN = 2;

  private Queries() {}

  /** Articles that hold the meaning of a segment, whatever the reading. */
  static Query holding(String field, Segments.Segment segment) {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    segment.readings().forEach(reading -> any.add(phrase(field, reading, 0), Occur.SHOULD));
    return any.build();
  }

  static Query scoring(String field, List<Piece> pieces) {
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    for (Piece piece : pieces) {
      all.add(boosted(segment(field, piece.segment()), piece.weight()), Occur.SHOULD);
    }
    for (int i = 0; i + 1 < pieces.size() && !pieces.get(i + 1).denial(); i++) {
      all.add(neighbours(field, pieces.get(i), pieces.get(i + 1)), Occur.SHOULD);
    }
    return all.build();
  }

  private static Query segment(String field, Segments.Segment segment) {
    List<Query> readings = new ArrayList<>();
    readings.add(typed(field, segment.typed()));
    for (List<String> other : segment.others()) {
      readings.add(boosted(phrase(field, other, 1), OTHER_READING / other.size()));
    }
    return new DisjunctionMaxQuery(readings, 0.1f);
  }

  private static Query typed(String field, List<String> words) {
    if (words.size() == 1) {
      return term(field, words.get(0));
    }
    BooleanQuery.Builder scattered = new BooleanQuery.Builder();
    float share = SCATTERED / words.size();
    words.forEach(word -> scattered.add(boosted(term(field, word), share), Occur.SHOULD));
    return new DisjunctionMaxQuery(
        List.of(boosted(phrase(field, words, 1), 1.0 / words.size()), scattered.build()), 0.1f);
  }

  private static Query neighbours(String field, Piece left, Piece right) {
    List<String> ends =
        List.of(
            left.segment().typed().get(left.segment().typed().size() - 1),
            right.segment().typed().get(0));
    double weight = Math.min(left.weight(), right.weight()) * NEIGHBOURS / ends.size();
    return boosted(phrase(field, ends, ROOM_BETWEEN), weight);
  }

  private static Query phrase(String field, List<String> words, int room) {
    return words.size() == 1
        ? term(field, words.get(0))
        : new PhraseQuery(room, field, words.toArray(String[]::new));
  }

  private static Query term(String field, String word) {
    return new TermQuery(new Term(field, word));
  }

  private static Query boosted(Query query, double weight) {
    return new BoostQuery(query, (float) weight);
  }
}
