package org.tidemark.yaml;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Invisible;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * Looks at the characters before anybody parses them. Each troublesome one is reported, then
 * replaced by a harmless one of the same length, so that the rest of the file is still read and all
 * its problems come in one pass.
 */
final class RawText {
  private static final char MARK = '\uFEFF';
  private static final Pattern CURLY_OPENING =
      Pattern.compile(
          "(?m)(?:^[ ]*(?:-[ ]+)*|[:\\[,{][ ]+|[\\[{])([\\u201C\\u201D\\u2018\\u2019])");
  private static final Pattern HASH_GLUED_TO_TEXT =
      Pattern.compile("(?m)^[^#'\"\\n]*[^\\s#'\"][ ]+(#[^\\s#][^\\n\\r]*)");

  private final SourceText source;
  private final Problems problems;
  private final StringBuilder clean;

  private RawText(SourceText source, Problems problems) {
    this.source = source;
    this.problems = problems;
    this.clean = new StringBuilder(source.text());
  }

  /** The text with every troublesome character reported and replaced; offsets are unchanged. */
  static String cleaned(SourceText source, Problems problems) {
    RawText raw = new RawText(source, problems);
    raw.characters();
    raw.curlyQuotes();
    raw.lostAfterHash();
    return raw.clean.toString();
  }

  private void characters() {
    boolean json = source.name().endsWith(".json");
    for (int i = 0; i < clean.length(); i++) {
      char c = clean.charAt(i);
      if (c == '\t') {
        tab(i, json);
      } else if (c == MARK) {
        joined(i);
      } else if (Invisible.isInvisible(c)) {
        invisible(i, c);
      }
    }
  }

  /** JSON may be laid out with tabs; YAML may not, and its own message about them helps nobody. */
  private void tab(int at, boolean json) {
    clean.setCharAt(at, ' ');
    if (!json) {
      problems.add(
          Diagnostic.error(DiagnosticCode.TAB, source.span(at, at + 1), "a tab stands here")
              .help("use two spaces instead of each tab"));
    }
  }

  private void joined(int at) {
    clean.setCharAt(at, ' ');
    problems.add(
        Diagnostic.error(
                DiagnosticCode.JOINED_FILES,
                source.span(at, at + 1),
                "a byte-order mark stands inside the text")
            .help("two files seem to have been joined here; keep one policy in one file"));
  }

  private void invisible(int at, char c) {
    clean.setCharAt(at, ' ');
    Span place = source.span(at, at + 1);
    boolean prose = Invisible.isSpace(c) && RawProse.around(source, at);
    String what = "an invisible character stands here: " + Invisible.name(c);
    if (prose) {
      problems.add(
          Diagnostic.notice(DiagnosticCode.INVISIBLE_CHARACTER, place, what)
              .help("it is read as an ordinary space"));
    } else {
      problems.add(
          Diagnostic.error(DiagnosticCode.INVISIBLE_CHARACTER, place, what)
              .help("delete it, and type a space if one is wanted"));
    }
  }

  private void curlyQuotes() {
    Matcher opening = CURLY_OPENING.matcher(clean);
    while (opening.find()) {
      int at = opening.start(1);
      char c = clean.charAt(at);
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CURLY_QUOTE,
                  source.span(at, at + 1),
                  "a curly quote opens this value: " + Invisible.name(c))
              .help("use straight quotes: \" or '"));
      straighten(at, c);
    }
  }

  /** Straightens the pair on this line, so that parsing can go on behind it. */
  private void straighten(int at, char c) {
    boolean doubled = c == '\u201C' || c == '\u201D';
    int lineEnd = clean.indexOf("\n", at);
    int end = lineEnd < 0 ? clean.length() : lineEnd;
    clean.setCharAt(at, doubled ? '"' : '\'');
    for (int i = end - 1; i > at; i--) {
      char d = clean.charAt(i);
      if (doubled ? d == '\u201D' || d == '\u201C' : d == '\u2019' || d == '\u2018') {
        clean.setCharAt(i, doubled ? '"' : '\'');
        return;
      }
    }
    clean.setCharAt(at, ' ');
  }

  private void lostAfterHash() {
    Matcher hash = HASH_GLUED_TO_TEXT.matcher(clean);
    while (hash.find()) {
      Span lost = source.span(hash.start(1), hash.end(1));
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.LOST_AFTER_HASH,
                  lost,
                  "everything from this hash on is a comment and is not read: `"
                      + lost.text().strip()
                      + "`")
              .help(
                  "put the whole value in quotes to keep it, or write a space after the hash of a comment"));
    }
  }
}
