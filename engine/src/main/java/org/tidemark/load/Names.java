package org.tidemark.load;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;

/** Checks the names that a file gives: their letters, and that none is given twice. */
final class Names {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final String what;
  private final Problems problems;
  private final Map<String, Span> given = new HashMap<>();

  Names(String what, Problems problems) {
    this.what = what;
    this.problems = problems;
  }

  /** Takes note of a name; one that is not there was reported by whoever looked for it. */
  void give(String name, Span at) {
    if (name.isEmpty()) {
      return;
    }
    if (name.length() > PolicyLimits.DEFAULT.name()) {
      problems.add(tooLong(name, at));
    } else if (!NAME.matcher(name).matches()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.BAD_NAME,
                  at,
                  Typed.shown(name) + " cannot name " + article() + what + Typed.oddCharacter(name))
              .help(
                  "a name has small letters a to z, digits and single hyphens, and begins with a letter"));
    }
    Span first = given.putIfAbsent(name, at);
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  at,
                  "the " + what + " " + Typed.shown(name) + " stands twice")
              .and(first, "it stands here first")
              .help("give one of them another name, or delete it"));
    }
  }

  private Diagnostic tooLong(String name, Span at) {
    return Diagnostic.error(
            DiagnosticCode.TOO_LARGE,
            at,
            Typed.shown(name) + " is too long to name " + article() + what)
        .help(PolicyLimits.DEFAULT.name() + " characters are the most");
  }

  private String article() {
    return "aeiou".indexOf(what.charAt(0)) < 0 ? "a " : "an ";
  }
}
