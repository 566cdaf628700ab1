package org.tidemark.load;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlText;

/**
 * Holds a policy's texts against its numbers: a number with a unit is one that the policy declares,
 * or is marked as no limit.
 */
final class ProseChecks {
  /** Far more than any policy says; each is held against all that the policy declares and marks. */
  private static final int MOST = 2_000;

  static final String KEY = "numbers-that-are-no-limits";
  private static final String ONE_OR_TWO =
      "(?<![\\p{L}0-9.:{-])("
          + Units.NUMBER
          + ")(?: ?(?:to|or|and|-|\\p{Pd}) ?("
          + Units.NUMBER
          + "))?";
  private static final Pattern BEFORE_UNIT =
      Pattern.compile(
          ONE_OR_TWO + "[ -]?(" + Units.ANY + ")(?![\\p{L}0-9])", Pattern.CASE_INSENSITIVE);

  /** What stands between the word and its number. */
  private static final String BETWEEN =
      "(?:[ :=(]+(?:a|about|above|and|as|at|below|between|equal|equals|exactly|from|greater|higher|is|less|level|limit|low|lower|high|more|most|least|no|not|of|or|over|range|read|reading|reads|result|than|the|to|under|up|value|values|was))*[ :=(]*";

  private static final Pattern PH =
      Pattern.compile("(?<!\\p{L})(ph)" + BETWEEN + ONE_OR_TWO, Pattern.CASE_INSENSITIVE);

  private static final Pattern BEFORE_PH =
      Pattern.compile(ONE_OR_TWO + " ?(ph)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

  private final DeclaredNumbers declared;
  private final Problems problems;
  private final List<Located<String>> marks;
  private final Set<Located<String>> used = new HashSet<>();

  /** Those of the marks that stand in the text at hand. */
  private List<Located<String>> here = List.of();

  private int numbers;

  ProseChecks(DeclaredNumbers declared, List<Located<String>> marked, Problems problems) {
    this.declared = declared;
    this.problems = problems;
    this.marks = List.copyOf(marked);
  }

  void check(List<ProseTexts.Prose> texts) {
    for (ProseTexts.Prose prose : texts) {
      YamlText text = prose.text();
      here = marks.stream().filter(mark -> text.text().contains(mark.value())).toList();
      UnsafeNotation.check(text, problems);
      Matcher beforeUnit = BEFORE_UNIT.matcher(text.text());
      while (beforeUnit.find()) {
        number(text, beforeUnit, beforeUnit.group(1), beforeUnit.group(2), beforeUnit.group(3));
      }
      Matcher ph = PH.matcher(text.text());
      while (ph.find()) {
        number(text, ph, ph.group(2), ph.group(3), "pH");
      }
      Matcher beforePh = BEFORE_PH.matcher(text.text());
      while (beforePh.find()) {
        number(text, beforePh, beforePh.group(1), beforePh.group(2), "pH");
      }
    }
    marks.stream().filter(mark -> !used.contains(mark)).forEach(this::stale);
  }

  @SuppressWarnings(
      "NullAway") // a group that did not take part is null, and Stream.ofNullable is for that
  private void number(YamlText text, Matcher found, String one, String other, String unit) {
    numbers++;
    if (numbers == MOST + 1) {
      problems.add(tooMany(at(text, found)));
    }
    if (numbers > MOST) {
      return;
    }
    boolean marked = isMarked(text.text(), found);
    boolean known =
        Stream.concat(Stream.of(one), Stream.ofNullable(other))
            .allMatch(number -> declared.holds(number, unit));
    if (!marked && !known) {
      problems.add(undeclared(at(text, found), found.group(), declared.namesOf(unit)));
    }
  }

  private static Diagnostic tooMany(Span at) {
    return Diagnostic.error(
            DiagnosticCode.TOO_LARGE,
            at,
            "the texts hold more than " + MOST + " numbers with a unit")
        .help("nobody reads this much at a bedside; two files may have been joined");
  }

  /**
   * Whether the words of a mark stand around the number, so that it is marked there and only there.
   */
  private boolean isMarked(String text, Matcher found) {
    boolean marked = false;
    for (Located<String> mark : here) {
      int from = Math.max(0, found.end() - mark.value().length());
      int to = Math.min(text.length(), found.start() + mark.value().length());
      if (text.substring(from, to).contains(mark.value())) {
        used.add(mark);
        marked = true;
      }
    }
    return marked;
  }

  /** Where it stands; all of the text when a line break or an escape hides it. */
  static Span at(YamlText text, Matcher found) {
    String typed = text.span().text();
    int quote = typed.startsWith("\"") || typed.startsWith("'") ? 1 : 0;
    int at = typed.indexOf(found.group(), Math.min(typed.length(), found.start() + quote));
    return at < 0
        ? text.span()
        : text.span()
            .source()
            .span(text.span().start() + at, text.span().start() + at + found.group().length());
  }

  private static Diagnostic undeclared(Span at, String typed, List<String> values) {
    Optional<String> first = values.stream().findFirst();
    return Diagnostic.error(
            DiagnosticCode.NUMBER_IN_TEXT,
            at,
            Typed.shown(typed) + " is a number that this policy does not declare")
        .help(
            first.map(v -> "name the value in braces, such as {" + v + "}; ").orElse("")
                + "if it is no limit, write it with the words around it in `"
                + KEY
                + "`");
  }

  private void stale(Located<String> mark) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.STALE_MARK,
                mark.span(),
                Typed.shown(mark.value()) + " stands in no text of this policy")
            .help("delete it, or write the number and the words around it as the text does"));
  }
}
