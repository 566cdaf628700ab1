package org.tidemark.load;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.model.Barred;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;

/**
 * Words that name a test which must not count stand only where it is forbidden. A step that asks
 * for the test is an error; a thing on a tray is a question to its author, since it may be there
 * for something else.
 */
final class NeverWords {
  private static final Set<String> INSTRUCTIONS = Set.of("do", "next", "then");
  private static final Set<String> THINGS = Set.of("items", "fields");
  private static final Pattern FORBIDS =
      Pattern.compile(
          "(?:^|[.;:!?]\\s+)(?:do not|don't|never|no|not)\\b[^.;!?]*$", Pattern.CASE_INSENSITIVE);

  private final List<Barred> tests;
  private final Problems problems;

  NeverWords(List<Barred> tests, Problems problems) {
    this.tests = List.copyOf(tests);
    this.problems = problems;
  }

  void check(List<ProseTexts.Prose> texts) {
    for (ProseTexts.Prose prose : texts) {
      if (INSTRUCTIONS.contains(prose.key()) || THINGS.contains(prose.key())) {
        tests.forEach(test -> test.words().forEach(word -> look(prose, test, word)));
      }
    }
  }

  private void look(ProseTexts.Prose prose, Barred test, String word) {
    Matcher found =
        Pattern.compile(
                "(?<!\\p{L})" + Pattern.quote(word) + "(?:e?s)?(?!\\p{L})",
                Pattern.CASE_INSENSITIVE)
            .matcher(prose.text().text());
    while (found.find()) {
      if (!FORBIDS.matcher(prose.text().text().substring(0, found.start())).find()) {
        problems.add(asksForIt(prose, test, found));
      }
    }
  }

  private static Diagnostic asksForIt(ProseTexts.Prose prose, Barred test, Matcher found) {
    String said =
        Typed.shown(found.group())
            + (INSTRUCTIONS.contains(prose.key()) ? " is asked for here" : " is on a list here")
            + ", and `"
            + test.finding()
            + "` must not count";
    Diagnostic diagnostic =
        INSTRUCTIONS.contains(prose.key())
            ? Diagnostic.error(
                DiagnosticCode.NEVER_USED_HERE, ProseChecks.at(prose.text(), found), said)
            : Diagnostic.warning(
                DiagnosticCode.NEVER_USED_HERE, ProseChecks.at(prose.text(), found), said);
    return diagnostic.help(test.because() + " Take it out, or forbid it: Do not ...");
  }
}
