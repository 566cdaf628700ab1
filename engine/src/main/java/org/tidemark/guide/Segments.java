package org.tidemark.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.TypeAttribute;
import org.apache.lucene.util.graph.GraphTokenStreamFiniteStrings;

/**
 * A query cut where all its readings meet. "ngt blocked" has two segments: one that reads ngt or
 * nasogastric tube and so on, and one that reads blocked or clogged and so on.
 *
 * @param all in the order of the query
 */
record Segments(List<Segment> all) {
  /**
   * A piece of a query.
   *
   * @param typed the words as they were typed
   * @param others what else they may read
   */
  record Segment(List<String> typed, List<List<String>> others) {
    List<List<String>> readings() {
      List<List<String>> readings = new ArrayList<>(others);
      readings.add(0, typed);
      return readings;
    }
  }

  static Segments of(Analyzer queries, String text) {
    try (TokenStream stream = queries.tokenStream(Terms.FIELD, text)) {
      GraphTokenStreamFiniteStrings graph = new GraphTokenStreamFiniteStrings(stream);
      List<Segment> segments = new ArrayList<>();
      int from = 0;
      for (int cut : graph.articulationPoints()) {
        segments.add(segment(graph, from, cut));
        from = cut;
      }
      segments.add(segment(graph, from, -1));
      segments.removeIf(segment -> segment.typed().isEmpty());
      return new Segments(List.copyOf(segments));
    } catch (IOException impossible) {
      throw new UncheckedIOException("a query in memory could not be read", impossible);
    }
  }

  private static Segment segment(GraphTokenStreamFiniteStrings graph, int from, int to)
      throws IOException {
    List<String> typed = List.of();
    List<List<String>> others = new ArrayList<>();
    Iterator<TokenStream> readings = graph.getFiniteStrings(from, to);
    while (readings.hasNext()) {
      List<String> words = new ArrayList<>();
      if (read(readings.next(), words)) {
        typed = words;
      } else {
        others.add(words);
      }
    }
    return new Segment(typed, others);
  }

  /** Whether the words are those that were typed. */
  private static boolean read(TokenStream stream, List<String> words) throws IOException {
    CharTermAttribute word = stream.getAttribute(CharTermAttribute.class);
    TypeAttribute type = stream.getAttribute(TypeAttribute.class);
    boolean typed = true;
    stream.reset();
    while (stream.incrementToken()) {
      words.add(word.toString());
      typed &= !"SYNONYM".equals(type.type());
    }
    stream.end();
    return typed;
  }

  /** What the whole reads when it is one segment; nothing when it is several. */
  List<List<String>> readings() {
    return all.size() == 1 ? all.get(0).readings() : List.of();
  }

  /** The words as they were typed. */
  List<String> typed() {
    return all.stream().flatMap(segment -> segment.typed().stream()).toList();
  }
}
