package org.tidemark.guide;

import java.io.IOException;
import java.util.function.UnaryOperator;
import org.apache.lucene.analysis.TokenFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** Writes each word anew. */
final class WordFilter extends TokenFilter {
  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final UnaryOperator<String> change;

  WordFilter(TokenStream input, UnaryOperator<String> change) {
    super(input);
    this.change = change;
  }

  @Override
  public boolean incrementToken() throws IOException {
    if (!input.incrementToken()) {
      return false;
    }
    String word = change.apply(term.toString());
    term.setEmpty().append(word);
    return true;
  }
}
