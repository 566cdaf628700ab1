package org.tidemark.yaml;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;

/** Says in an author's words what the parser stumbled over, and what to write instead. */
final class SyntaxHelp {
  static final String SLIPPED = "this line does not line up with the lines above it";

  private static final int LONGEST_COPY = 120;

  private static final Pattern GLUED = Pattern.compile("[ ]*(?:-[ ]+)*([a-z][a-z0-9-]*):(\\S.*)");

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
          new Hint("expected <block end>", SLIPPED, "check the spaces at its start"),
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
              "escape",
              "a backslash in double quotes changes the character after it",
              "use single quotes, or forward slashes in a path"),
          new Hint(
              "hexadecimal",
              "a backslash in double quotes changes the character after it",
              "use single quotes, or forward slashes in a path"));

  private SyntaxHelp() {}

  static Diagnostic explain(Stumble stumble, Line line) {
    Span blame = stumble.blame();
    String value = line.value().text();
    boolean inValue = line.named() && blame.start() >= line.value().start();
    boolean escape = stumble.problem().contains("escape") || stumble.problem().contains("hexa");
    if (stumble.quoted().filter(blame::equals).isPresent()) {
      return unclosedQuote(stumble, blame);
    }
    if (stumble.problem().contains("expected '<document start>'")) {
      return severalDocuments(blame);
    }
    String message = inValue && !escape ? ofFirstCharacter(value) : "";
    if (!message.isEmpty()) {
      return error(line.value(), message).help(wayOut(value));
    }
    return inValue ? ofProblem(stumble, blame, value) : ofWholeLine(stumble, blame);
  }

  private static Diagnostic ofWholeLine(Stumble stumble, Span blame) {
    SourceText source = blame.source();
    Matcher glued = GLUED.matcher(source.line(blame.line()));
    if (glued.matches()) {
      Span at = source.span(blame.start(), source.endOfLine(blame.line()));
      return noSpace(at, glued.group(1), glued.group(2));
    }
    return stumble.problem().contains("mapping values are not allowed")
        ? error(blame, SLIPPED)
            .help("check the spaces at its start; what belongs together begins in one column")
        : ofProblem(stumble, blame, "");
  }

  static Diagnostic noSpace(Span at, String name, String value) {
    return error(at, "a space is missing behind the colon").help("write " + name + ": " + value);
  }

  static Diagnostic dashWithoutSpace(Span at) {
    return error(at, "a space is missing behind the dash")
        .help("write a dash, a space and the text; " + copy(at.text()));
  }

  static Diagnostic severalDocuments(Span at) {
    return Diagnostic.error(DiagnosticCode.SEVERAL_DOCUMENTS, at, "a second document begins here")
        .help(
            "a line of --- or ... divides a file; keep one policy in one file, or delete that line");
  }

  private static Diagnostic unclosedQuote(Stumble stumble, Span quoted) {
    Span opening = quoted.source().span(quoted.start(), quoted.start() + 1);
    return error(opening, "a quote is opened here and not closed on this line")
        .and(stumble.at(), "it swallowed everything up to here")
        .help("close the quote at the end of its text");
  }

  private static String ofFirstCharacter(String value) {
    char first = value.charAt(0);
    if ("%@`*&!?-:,]}".indexOf(first) >= 0) {
      return "a value cannot begin with " + first + " when it is not in quotes";
    }
    if ((first == '"' || first == '\'') && value.indexOf(first, 1) < 0) {
      return "a quote is opened here and not closed on this line";
    }
    if (first == '"' || first == '\'') {
      return "the text goes on after its closing quote, or a quote is missing";
    }
    if (first == '{' || first == '[') {
      return "a bracket is not closed, or text goes on after it, or a text inside needs quotes";
    }
    if (first == '>' || first == '|') {
      return "a value that begins with > or | opens a long text, and this is none";
    }
    return "";
  }

  private static String wayOut(String value) {
    if (value.charAt(0) == '>' || value.charAt(0) == '|') {
      return "write limits in words: at-most, below, at-least, above";
    }
    if (value.charAt(0) == '{' || value.charAt(0) == '[') {
      return "close every bracket, and put texts inside in double quotes; " + copy(value);
    }
    boolean halfQuoted =
        "\"'".indexOf(value.charAt(0)) >= 0 && value.indexOf(value.charAt(0), 1) < 0;
    return copy(halfQuoted ? value.substring(1) : value);
  }

  /** The value as it can be typed. */
  static String copy(String value) {
    return value.length() > LONGEST_COPY
        ? "put the whole text in double quotes"
        : "for a text, write " + Typed.quoted(value);
  }

  private static Diagnostic ofProblem(Stumble stumble, Span blame, String value) {
    for (Hint hint : HINTS) {
      if (stumble.problem().contains(hint.inProblem())) {
        boolean quotes = hint.help().equals("put the whole value in double quotes");
        String help = quotes && !value.isEmpty() ? copy(value) : hint.help();
        return error(blame, hint.message()).help(help);
      }
    }
    return error(blame, "this is not well-formed: " + stumble.problem())
        .help("check spaces, colons, quotes and brackets near this place");
  }

  private static Diagnostic error(Span at, String message) {
    return Diagnostic.error(DiagnosticCode.SYNTAX, at, message);
  }
}
