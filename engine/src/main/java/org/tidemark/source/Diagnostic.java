package org.tidemark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something to say about a place in a text: what is wrong, where, and what to write instead.
 *
 * @param code the kind of problem
 * @param severity how much it matters
 * @param at where it is
 * @param message what is wrong, one sentence, lower case, no full stop
 * @param help what to write or do, when that can be said
 * @param related other places that belong to it
 * @param acceptance why it is let stand, if somebody has accepted it
 */
public record Diagnostic(
    DiagnosticCode code,
    Severity severity,
    Span at,
    String message,
    Optional<String> help,
    List<Related> related,
    Optional<Acceptance> acceptance) {

  /**
   * Why a remark is let stand.
   *
   * @param why the reason
   * @param by the role or body that accepted it
   */
  public record Acceptance(String why, String by) {}

  /**
   * Another place that belongs to a diagnostic.
   *
   * @param at the place
   * @param message what it has to do with it
   */
  public record Related(Span at, String message) {}

  public Diagnostic {
    related = List.copyOf(related);
  }

  public static Diagnostic error(DiagnosticCode code, Span at, String message) {
    return of(code, Severity.ERROR, at, message);
  }

  public static Diagnostic warning(DiagnosticCode code, Span at, String message) {
    return of(code, Severity.WARNING, at, message);
  }

  public static Diagnostic notice(DiagnosticCode code, Span at, String message) {
    return of(code, Severity.NOTICE, at, message);
  }

  private static Diagnostic of(DiagnosticCode code, Severity severity, Span at, String message) {
    return new Diagnostic(
        code, severity, at, message, Optional.empty(), List.of(), Optional.empty());
  }

  /** The same, with advice. */
  public Diagnostic help(String advice) {
    return new Diagnostic(code, severity, at, message, Optional.of(advice), related, acceptance);
  }

  /** The same, with one more place. */
  public Diagnostic and(Span place, String what) {
    List<Related> more = new ArrayList<>(related);
    more.add(new Related(place, what));
    return new Diagnostic(code, severity, at, message, help, more, acceptance);
  }

  /** The same remark, let stand. An error cannot be. */
  public Diagnostic accepted(String why, String by) {
    if (severity == Severity.ERROR) {
      throw new IllegalStateException("an error is mended and never accepted: " + message);
    }
    return new Diagnostic(
        code,
        Severity.ACCEPTED,
        at,
        message,
        Optional.empty(),
        related,
        Optional.of(new Acceptance(why, by)));
  }

  public boolean isAccepted() {
    return acceptance.isPresent();
  }

  /**
   * File, line, column, what is wrong, the line itself with what is meant underlined, and what to
   * write.
   */
  public String render() {
    StringBuilder out = new StringBuilder();
    String kind = severity.name().toLowerCase(Locale.ROOT);
    out.append(at).append(": ").append(kind).append(": ").append(message);
    out.append(" [").append(code.id()).append("]\n");
    Snippet.append(out, at);
    for (Related other : related) {
      out.append("  ").append(other.at()).append(": ").append(other.message()).append('\n');
      Snippet.append(out, other.at());
    }
    acceptance.ifPresent(
        a -> out.append("  accepted by ").append(a.by()).append(": ").append(a.why()).append('\n'));
    help.ifPresent(advice -> out.append("  help: ").append(advice).append('\n'));
    return out.toString();
  }
}
