package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Invisible;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;

/**
 * Quotes that are not the straight ones of the keyboard and open a value. They are reported and
 * straightened, so that reading can go on. Inside running text they are right.
 */
final class Quotes {
  private static final String DOUBLE =
      "\u201C\u201D\u201E\u201F\u00AB\u00BB\u2033\u2036\u275D\u275E\uFF02\u301D\u301E\u300C\u300D";
  private static final String SINGLE =
      "\u2018\u2019\u201A\u201B\u2039\u203A\u2032\u2035\u275B\u275C\uFF07\u00B4";
  private static final Pattern OPENING =
      Pattern.compile("(?m)(?:^[ ]*(?:-[ ]+)*|:[ ]+|[\\[,{][ ]*)([" + DOUBLE + SINGLE + "])");

  /** More than anybody mends in one go. */
  private static final int MOST = 200;

  private final SourceText source;
  private final StringBuilder clean;
  private final List<Diagnostic> found = new ArrayList<>();

  private Quotes(SourceText source, StringBuilder clean) {
    this.source = source;
    this.clean = clean;
  }

  /**
   * Straightens the quotes that open a value.
   *
   * @param texts the texts that a first reading found; a quote inside one of them opens nothing
   */
  static List<Diagnostic> straighten(
      SourceText source, StringBuilder clean, NavigableMap<Integer, Span> texts) {
    Quotes quotes = new Quotes(source, clean);
    Matcher opening = OPENING.matcher(clean.toString());
    while (opening.find() && quotes.found.size() < MOST) {
      int at = opening.start(1);
      if (!isInside(texts.lowerEntry(at), at)) {
        quotes.straighten(at);
      }
    }
    return quotes.found;
  }

  private static boolean isInside(
      Map.@org.jspecify.annotations.Nullable Entry<Integer, Span> text, int at) {
    return text != null && at < text.getValue().end();
  }

  private void straighten(int at) {
    char c = clean.charAt(at);
    String family = DOUBLE.indexOf(c) >= 0 ? DOUBLE : SINGLE;
    int lineEnd = source.endOfLine(source.lineAt(at));
    Matcher closing =
        Pattern.compile("[" + family + "'\"](?=[ ]*(?:[:,\\]}]|$|[ ]#))")
            .matcher(clean.substring(at + 1, lineEnd));
    boolean closed = closing.find();
    char straight = family.equals(DOUBLE) ? '"' : '\'';
    clean.setCharAt(at, closed ? straight : ' ');
    if (closed) {
      clean.setCharAt(at + 1 + closing.start(), straight);
    }
    int inside = closed ? at + 1 + closing.start() : lineEnd;
    report(source.span(at, at + 1), source.text().substring(at + 1, inside));
  }

  private void report(Span at, String inside) {
    found.add(
        Diagnostic.error(
                DiagnosticCode.CURLY_QUOTE,
                at,
                "a quote that is not a straight one opens this: "
                    + Invisible.name(at.text().charAt(0)))
            .help("use straight quotes: " + Typed.quoted(inside)));
  }
}
