package org.tidemark.guide;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.charfilter.BaseCharFilter;

/**
 * A text made ready to be cut into words, in one pass, with every offset still leading back to the
 * text as it was: dashes and apostrophes of one kind, nothing that nobody sees, no sources in
 * brackets, and a space between a number and the unit written onto it.
 */
final class TidyText extends BaseCharFilter {
  private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFF0D";
  private static final String APOSTROPHES = "\u2018\u2019\u02BC\u00B4`";
  private static final String UNSEEN = "\u00AD\u200B\u200C\u200D\u2060\uFEFF";
  private static final String JOINTS = ":_";

  /** A source in brackets, which is no part of the sentence. */
  private static final Pattern CITATION =
      Pattern.compile("\\[(?:[A-Z]{1,4}-[A-Z0-9-]+(?:[,;] ?)?)+\\]|\\[common practice\\]");

  /** Between a number and its unit, or between the name pH and its number. */
  private static final Pattern GLUED =
      Pattern.compile(
          "(?<![\\p{L}\\d.,])\\d+(?:[.,]\\d+)?(?=(?:mls?|cms?|mms?|ccs?|fr|french|kgs?|mgs?|hrs?"
              + "|hours?|days?|kcals?|mmhg|ph)(?![\\p{L}\\d]))|(?<![\\p{L}\\d])ph(?=\\d)",
          Pattern.CASE_INSENSITIVE);

  private final Reader tidy;

  TidyText(Reader input) {
    super(input);
    try {
      StringWriter whole = new StringWriter();
      input.transferTo(whole);
      tidy = new StringReader(tidied(whole.toString()));
    } catch (IOException unreadable) {
      throw new UncheckedIOException("a text could not be read", unreadable);
    }
  }

  @Override
  public int read(char[] into, int from, int count) throws IOException {
    return tidy.read(into, from, count);
  }

  private String tidied(String text) {
    StringBuilder same = new StringBuilder(text);
    boolean digits = false;
    boolean unseen = false;
    for (int i = 0; i < same.length(); i++) {
      char c = same.charAt(i);
      same.setCharAt(i, plain(same, i, c));
      digits |= Character.isDigit(c);
      unseen |= UNSEEN.indexOf(c) >= 0;
    }
    if (text.indexOf('[') >= 0) {
      blank(same);
    }
    return digits || unseen ? moved(same) : same.toString();
  }

  private static char plain(StringBuilder text, int at, char c) {
    if (c < 128 && c != '.' && c != ':' && c != '_' && c != '`') {
      return c;
    }
    if (DASHES.indexOf(c) >= 0) {
      return '-';
    }
    if (APOSTROPHES.indexOf(c) >= 0) {
      return '\'';
    }
    return JOINTS.indexOf(c) >= 0 || (c == '.' && endsSentence(text, at)) ? ' ' : c;
  }

  /** A full stop between two words, without the space that should follow it. */
  private static boolean endsSentence(StringBuilder text, int at) {
    return at >= 2
        && at + 2 < text.length()
        && Character.isLetter(text.charAt(at - 1))
        && Character.isLetter(text.charAt(at - 2))
        && Character.isLetter(text.charAt(at + 1))
        && Character.isLetter(text.charAt(at + 2));
  }

  private static void blank(StringBuilder text) {
    Matcher citation = CITATION.matcher(text.toString());
    while (citation.find()) {
      for (int i = citation.start(); i < citation.end(); i++) {
        text.setCharAt(i, ' ');
      }
    }
  }

  /** Takes out what nobody sees and parts what is glued; both move the offsets behind them. */
  private String moved(StringBuilder text) {
    Matcher glued = GLUED.matcher(text);
    int cut = glued.find() ? glued.end() : -1;
    StringBuilder out = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      if (i == cut) {
        out.append(' ');
        addOffCorrectMap(out.length(), i - out.length());
        cut = glued.find() ? glued.end() : -1;
      }
      if (UNSEEN.indexOf(text.charAt(i)) >= 0) {
        addOffCorrectMap(out.length(), i + 1 - out.length());
      } else {
        out.append(text.charAt(i));
      }
    }
    return out.toString();
  }
}
