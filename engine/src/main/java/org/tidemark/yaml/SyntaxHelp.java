package org.tidemark.yaml;

import java.util.List;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Span;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in an author's words what the parser stumbled over. */
final class SyntaxHelp {
  private record Hint(String inProblem, String message, String help) {}

  private static final List<Hint> HINTS =
      List.of(
          new Hint(
              "mapping values are not allowed",
              "a second colon with a space stands in this value",
              "put the whole value in double quotes"),
          new Hint(
              "cannot start any token",
              "a value cannot begin with this character",
              "put the whole value in double quotes"),
          new Hint(
              "expected <block end>",
              "this line does not line up with the lines above it",
              "check the spaces at its start; text that goes on after a quote, or that begins with a quote, goes in double quotes as a whole"),
          new Hint(
              "could not find expected ':'",
              "this line has no colon, or is not lined up with the field it belongs to",
              "write a name, a colon, a space and a value; long text goes in double quotes"),
          new Hint(
              "expected ',' or",
              "a bracket is not closed, or text in brackets holds a colon, a question mark or a bracket",
              "put each text inside brackets in double quotes, and close every bracket"),
          new Hint(
              "unexpected end of stream", "a quote is opened and never closed", "close the quote"),
          new Hint(
              "alphabetic or numeric character",
              "a value cannot begin with this character",
              "put the whole value in double quotes"),
          new Hint(
              "unknown escape character",
              "a backslash in double quotes changes the character after it",
              "use single quotes, or forward slashes in a path"),
          new Hint(
              "hexadecimal",
              "a backslash in double quotes changes the character after it",
              "use single quotes, or forward slashes in a path"),
          new Hint(
              "block scalars",
              "a value that begins with > or | opens a long text, and this is none",
              "write limits in words: at-most, below, at-least, above"),
          new Hint(
              "indentation indicator",
              "a value that begins with > or | opens a long text, and this is none",
              "write limits in words: at-most, below, at-least, above"),
          new Hint(
              "comment or a line break",
              "a value that begins with > or | opens a long text, and this is none",
              "write limits in words: at-most, below, at-least, above"));

  private SyntaxHelp() {}

  static Diagnostic explain(MarkedYAMLException malformed, Span at) {
    String problem = String.valueOf(malformed.getProblem());
    for (Hint hint : HINTS) {
      if (problem.contains(hint.inProblem())) {
        return Diagnostic.error(DiagnosticCode.SYNTAX, at, hint.message()).help(hint.help());
      }
    }
    return Diagnostic.error(DiagnosticCode.SYNTAX, at, "this is not well-formed: " + problem)
        .help("check spaces, colons, quotes and brackets near this place");
  }
}
