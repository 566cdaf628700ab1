package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Invisible;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * Looks at the characters before anybody parses them. Each that is never right is reported and
 * replaced by spaces of the same length, so that the rest is still read and all problems come in
 * one pass. Spaces that are not ordinary ones are right in running text only; what is running text
 * is known after parsing, so they are kept for later.
 */
final class Characters {
  private static final int BYTE_ORDER_MARK = 0xFEFF;
  private static final int REPLACEMENT = 0xFFFD;

  private final SourceText source;
  private final Problems problems;
  private final StringBuilder clean;
  private final List<Span> doubtful = new ArrayList<>();
  private final boolean json;
  private boolean cut;
  private boolean blankSoFar = true;
  private boolean ascii = true;

  private Characters(SourceText source, Problems problems) {
    this.source = source;
    this.problems = problems;
    this.clean = new StringBuilder(source.text());
    this.json = isJson(source);
  }

  static Characters scan(SourceText source, Problems problems) {
    Characters characters = new Characters(source, problems);
    characters.scan();
    return characters;
  }

  /** The text with every character that is never right replaced; offsets are unchanged. */
  StringBuilder clean() {
    return clean;
  }

  /** The places of characters that are right in running text only. */
  List<Span> doubtful() {
    return doubtful;
  }

  /** Whether the end was left out, since it belongs to another file. */
  boolean isCut() {
    return cut;
  }

  /** Whether every character is one of the keyboard's; most of what may go wrong then cannot. */
  boolean isAscii() {
    return ascii;
  }

  private static boolean isJson(SourceText source) {
    return source.name().toLowerCase(Locale.ROOT).endsWith(".json")
        || source.text().stripLeading().startsWith("{");
  }

  private void scan() {
    String text = source.text();
    char[] units = text.toCharArray();
    int at = 0;
    while (at < units.length) {
      if (isOrdinary(units[at])) {
        at++;
        continue;
      }
      int c = text.codePointAt(at);
      int end = at + Character.charCount(c);
      blankSoFar = c == '\n' || c == '\r' || (blankSoFar && isBlank(c));
      if (c == '\t' || c > '~' || Invisible.isInvisible(c)) {
        end = endOfRun(c, at);
        look(c, source.span(at, end));
      }
      at = end;
    }
  }

  /** Nearly every character is one of these, and a short program's time goes where they go. */
  private boolean isOrdinary(char c) {
    if (c > ' ' && c <= '~') {
      blankSoFar = false;
      return true;
    }
    if (c == '\n') {
      blankSoFar = true;
      return true;
    }
    ascii &= c <= '~';
    return c == ' ';
  }

  private static boolean isBlank(int c) {
    return c == ' ' || c == '\t' || Invisible.isInvisible(c);
  }

  /** Several of the same in a row are one problem. */
  private int endOfRun(int c, int start) {
    String text = source.text();
    int end = start;
    while (end < text.length() && text.codePointAt(end) == c) {
      end += Character.charCount(c);
    }
    return end;
  }

  private void look(int c, Span at) {
    if (c == '\t') {
      tab(at);
    } else if (c == BYTE_ORDER_MARK) {
      joined(at);
    } else if (c == REPLACEMENT || Invisible.isNoCharacter(c)) {
      lost(at);
    } else if (Invisible.isSpace(c) || Invisible.isSoft(c)) {
      doubtful(c, at);
    } else if (Invisible.isInvisible(c)) {
      blank(at);
      problems.add(unseen(at));
    }
  }

  private void blank(Span at) {
    for (int i = at.start(); i < at.end(); i++) {
      char c = clean.charAt(i);
      clean.setCharAt(i, c == '\n' || c == '\r' ? c : ' ');
    }
  }

  /** JSON may be laid out with tabs; YAML may not, and its own message about them helps nobody. */
  private void tab(Span at) {
    blank(at);
    if (!json) {
      String what =
          at.start() == source.startOfLine(at.line())
              ? "this line starts with a tab"
              : "a tab stands here";
      problems.add(
          Diagnostic.error(DiagnosticCode.TAB, at, what)
              .help("use spaces: two for each step to the right"));
    }
  }

  /** What follows is another file's; reading it as part of this one would report it all twice. */
  private void joined(Span at) {
    blank(at);
    if (at.start() > 0) {
      cut = true;
      blank(source.span(at.start(), clean.length()));
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.JOINED_FILES, at, "a byte-order mark stands inside the text")
            .help("two files seem to have been joined here; keep one policy in one file"));
  }

  private void lost(Span at) {
    blank(at);
    problems.add(
        Diagnostic.error(
                DiagnosticCode.NOT_UTF8,
                at,
                "a character was lost here when the text was saved: "
                    + Invisible.name(at.text().codePointAt(0)))
            .help("look up what was meant, type it again, and save the file as UTF-8"));
  }

  /** What is left in stays in until the tree is built, except where it would be a line's first. */
  private void doubtful(int c, Span at) {
    doubtful.add(at);
    if (Invisible.isSpace(c) || blankSoFar) {
      blank(at);
    }
  }

  /** The error for a character that cannot be seen and must not stand where it stands. */
  static Diagnostic unseen(Span at) {
    return Diagnostic.error(DiagnosticCode.INVISIBLE_CHARACTER, at, what(at))
        .help("delete it, and type a space if one is wanted");
  }

  static String what(Span at) {
    int c = at.text().codePointAt(0);
    int count = at.text().codePointCount(0, at.text().length());
    return count == 1
        ? "an invisible character stands here: " + Invisible.name(c)
        : count + " invisible characters stand here: " + Invisible.name(c);
  }
}
