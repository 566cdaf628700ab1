package org.tidemark.guide;

import java.io.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.KStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.SetKeywordMarkerFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.synonym.SynonymGraphFilter;
import org.apache.lucene.analysis.synonym.SynonymMap;
import org.tidemark.source.Located;

/**
 * Cuts text into words that can be compared. No word is ever dropped. The same chain serves texts,
 * queries and the rules for synonyms; only queries get the synonyms, at the very end.
 */
final class GuideAnalyzer extends Analyzer {
  private final Spelling spelling;
  private final CharArraySet keep;
  private final boolean stemmed;
  private final Optional<SynonymMap> synonyms;

  private GuideAnalyzer(
      Spelling spelling, CharArraySet keep, boolean stemmed, Optional<SynonymMap> synonyms) {
    this.spelling = spelling;
    this.keep = keep;
    this.stemmed = stemmed;
    this.synonyms = synonyms;
  }

  static GuideAnalyzer forTexts(Words words) {
    Spelling spelling = new Spelling(words.spelling());
    return new GuideAnalyzer(spelling, kept(words.keep(), spelling), true, Optional.empty());
  }

  /** The same chain, with the endings left on. */
  GuideAnalyzer unstemmed() {
    return new GuideAnalyzer(spelling, keep, false, synonyms);
  }

  /** The same chain with synonyms after it. */
  GuideAnalyzer with(SynonymMap map) {
    return new GuideAnalyzer(spelling, keep, stemmed, Optional.of(map));
  }

  private static CharArraySet kept(List<Located<String>> keep, Spelling spelling) {
    CharArraySet set = new CharArraySet(keep.size(), false);
    keep.forEach(word -> set.add(spelling.unify(word.value().toLowerCase(Locale.ROOT))));
    return CharArraySet.unmodifiableSet(set);
  }

  /** Two pieces of text that stand in one field are far apart, so that no phrase spans both. */
  @Override
  public int getPositionIncrementGap(String field) {
    return 100;
  }

  @Override
  protected Reader initReader(String field, Reader reader) {
    return new TidyText(reader);
  }

  /** Short forms with their dots: n.g. is ng. A number keeps its point. */
  private static String undotted(String word) {
    return Character.isLetter(word.charAt(0)) ? word.replace(".", "") : word;
  }

  @Override
  protected TokenStreamComponents createComponents(String field) {
    Tokenizer source = new StandardTokenizer();
    TokenStream stream = new LowerCaseFilter(source);
    stream = new WordFilter(stream, GuideAnalyzer::undotted);
    stream = new WordFilter(stream, Negation::unify);
    stream = new EnglishPossessiveFilter(stream);
    stream = new ASCIIFoldingFilter(stream);
    stream = new WordFilter(stream, spelling::unify);
    stream = new SetKeywordMarkerFilter(stream, keep);
    TokenStream stems = stemmed ? new KStemFilter(stream) : stream;
    return new TokenStreamComponents(
        source,
        synonyms.<TokenStream>map(m -> new SynonymGraphFilter(stems, m, true)).orElse(stems));
  }
}
