package org.tidemark.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;

/** The words of a text as the index knows them. */
final class Terms {
  /** The field that every analysis is made for; the chain does not look at it. */
  static final String FIELD = "text";

  /**
   * A word of a text and where it stood.
   *
   * @param word as the index knows it
   * @param start the offset at which it began
   * @param end the offset after it
   */
  record Term(String word, int start, int end) {}

  private Terms() {}

  static List<String> words(Analyzer analyzer, String text) {
    return of(analyzer, text).stream().map(Term::word).toList();
  }

  static List<Term> of(Analyzer analyzer, String text) {
    List<Term> terms = new ArrayList<>();
    try (TokenStream stream = analyzer.tokenStream(FIELD, text)) {
      CharTermAttribute word = stream.addAttribute(CharTermAttribute.class);
      OffsetAttribute place = stream.addAttribute(OffsetAttribute.class);
      stream.reset();
      while (stream.incrementToken()) {
        terms.add(new Term(word.toString(), place.startOffset(), place.endOffset()));
      }
      stream.end();
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory could not be read", impossible);
    }
    return terms;
  }
}
