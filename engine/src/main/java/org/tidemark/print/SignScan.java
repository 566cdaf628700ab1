package org.tidemark.print;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/**
 * Looks at every number sign of a template before Velocity does. Velocity reads a comment or an
 * unclosed block in silence and the words in it are lost, so the signs are judged here one by one.
 */
final class SignScan {
  private static final Pattern SIGN =
      Pattern.compile("#(?:(?<comment>[#*]|\\[\\[)|@?\\{?@?(?<word>[A-Za-z_][A-Za-z0-9_]*)|\\{)?");
  private static final List<String> ALLOWED = List.of("if", "elseif", "else", "end", "foreach");
  private static final String ALLOWED_WORDS = "#if, #elseif, #else, #end and #foreach";

  private final TemplateBody body;
  private final Problems problems;

  SignScan(TemplateBody body, Problems problems) {
    this.body = body;
    this.problems = problems;
  }

  /** Whether every sign is one that may stand. */
  boolean clean() {
    Matcher sign = SIGN.matcher(body.text());
    boolean clean = hiddenCharactersAbsent();
    while (sign.find()) {
      Optional<Diagnostic> problem = problem(sign);
      problem.ifPresent(problems::add);
      clean &= problem.isEmpty();
    }
    return clean;
  }

  private boolean hiddenCharactersAbsent() {
    String text = body.span().text();
    boolean clean = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Harmless.isHidden(c) && c != '\n' && c != '\r' && c != '\t') {
        problems.add(
            fence(i, i + 1, "a character that cannot be seen stands in the template")
                .help("delete it and type the words again"));
        clean = false;
      }
    }
    return clean;
  }

  private Optional<Diagnostic> problem(Matcher sign) {
    String word = sign.group("word");
    if (word != null) {
      return ALLOWED.contains(word) && sign.group().indexOf('@') < 0
          ? Optional.empty()
          : Optional.of(directive(sign, word));
    }
    if (sign.group("comment") != null) {
      return Optional.of(
          fence(sign.start(), sign.end(), "'" + sign.group() + "' would hide the words after it")
              .help("a heading begins in the first column, with a space after its number signs"));
    }
    return sign.group().endsWith("{")
        ? Optional.of(
            fence(sign.start(), sign.end(), "'#{' is not closed around a directive's name")
                .help("write #{else} or #{end}"))
        : Optional.empty();
  }

  private Diagnostic directive(Matcher sign, String word) {
    Optional<String> meant = Suggestion.nearest(word.toLowerCase(Locale.ROOT), ALLOWED);
    String help =
        meant
            .map(name -> "did you mean #" + name + "?")
            .orElse("a template may use " + ALLOWED_WORDS + ", and nothing else of the kind");
    return fence(sign.start(), sign.end(), "a template may not use '" + sign.group() + "'")
        .help(help);
  }

  private Diagnostic fence(int start, int end, String message) {
    return Diagnostic.error(DiagnosticCode.TEMPLATE_FENCE, body.at(start, end), message);
  }
}
