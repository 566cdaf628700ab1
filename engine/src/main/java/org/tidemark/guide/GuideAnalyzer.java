package org.tidemark.guide;

import java.io.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.charfilter.MappingCharFilter;
import org.apache.lucene.analysis.charfilter.NormalizeCharMap;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.KStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.SetKeywordMarkerFilter;
import org.apache.lucene.analysis.pattern.PatternReplaceCharFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.synonym.SynonymGraphFilter;
import org.apache.lucene.analysis.synonym.SynonymMap;
import org.tidemark.source.Located;

/**
 * Cuts text into words that can be compared. No word is ever dropped. The same chain serves texts,
 * queries and the rules for synonyms; only queries get the synonyms, at the very end.
 */
final class GuideAnalyzer extends Analyzer {
  /** A number with its unit written onto it: 2cm, 30mls, 5.5ph. */
  private static final Pattern GLUED =
      Pattern.compile(
          "\\b(\\d+(?:[.,]\\d+)?)(mls?|cms?|mms?|ccs?|fr|french|kgs?|mgs?|hrs?|hours?|days?|kcals?"
              + "|mmhg|ph)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern GLUED_PH = Pattern.compile("\\b(ph)(\\d)", Pattern.CASE_INSENSITIVE);

  /** A full stop without the space behind it. */
  private static final Pattern STOP = Pattern.compile("(\\p{L}{2})\\.(?=\\p{L}{2})");

  /** A source in brackets, which is no part of the sentence. */
  private static final Pattern CITATION =
      Pattern.compile("\\[(?:[A-Z]{1,4}-[A-Z0-9-]+(?:[,;] ?)?)+\\]|\\[common practice\\]");

  private static final NormalizeCharMap MARKS = marks();

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

  /** Dashes and apostrophes become one kind each; what nobody sees is taken out. */
  private static NormalizeCharMap marks() {
    NormalizeCharMap.Builder map = new NormalizeCharMap.Builder();
    for (char dash : "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFF0D".toCharArray()) {
      map.add(String.valueOf(dash), "-");
    }
    for (char apostrophe : "\u2018\u2019\u02BC\u00B4`".toCharArray()) {
      map.add(String.valueOf(apostrophe), "'");
    }
    for (char joint : ":_".toCharArray()) {
      map.add(String.valueOf(joint), " ");
    }
    for (char unseen : "\u00AD\u200B\u200C\u200D\u2060\uFEFF".toCharArray()) {
      map.add(String.valueOf(unseen), "");
    }
    return map.build();
  }

  /** Two pieces of text that stand in one field are far apart, so that no phrase spans both. */
  @Override
  public int getPositionIncrementGap(String field) {
    return 100;
  }

  @Override
  protected Reader initReader(String field, Reader reader) {
    Reader marked = new MappingCharFilter(MARKS, reader);
    Reader uncited = new PatternReplaceCharFilter(CITATION, " ", marked);
    Reader stopped = new PatternReplaceCharFilter(STOP, "$1 ", uncited);
    Reader apart = new PatternReplaceCharFilter(GLUED, "$1 $2", stopped);
    return new PatternReplaceCharFilter(GLUED_PH, "$1 $2", apart);
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
