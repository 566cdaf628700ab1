package org.tidemark.print;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.velocity.runtime.parser.Token;
import org.apache.velocity.runtime.parser.node.ASTIdentifier;
import org.apache.velocity.runtime.parser.node.ASTIndex;
import org.apache.velocity.runtime.parser.node.ASTMethod;
import org.apache.velocity.runtime.parser.node.ASTReference;
import org.apache.velocity.runtime.parser.node.Node;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;

/** Reads the references of a template: plain ones to names that exist, and no others. */
final class Refs {
  private static final String NAME = "([A-Za-z][A-Za-z0-9_]*)";
  private static final Pattern PLAIN = Pattern.compile("\\$" + NAME + "(?:\\." + NAME + ")?");
  private static final Pattern BRACED =
      Pattern.compile("\\$\\{" + NAME + "(?:\\." + NAME + ")?\\}");
  private static final int NAMES_SHOWN = 12;

  private final TemplateBody body;
  private final Problems problems;

  Refs(TemplateBody body, Problems problems) {
    this.body = body;
    this.problems = problems;
  }

  /**
   * A reference that may stand.
   *
   * @param root its first name
   * @param part its second name, when it has one
   * @param shape what stands behind it
   * @param span where it is
   */
  record Ref(String root, Optional<String> part, Shape shape, Span span) {
    boolean opens(String group) {
      return root.equals(group) && part.isPresent();
    }
  }

  /** The reference, or nothing after saying what is wrong with it. */
  Optional<Ref> read(ASTReference node, Scope scope) {
    Span span = span(node);
    Matcher plain = PLAIN.matcher(node.literal());
    Matcher braced = BRACED.matcher(node.literal());
    if (plain.matches()) {
      return resolve(plain.group(1), plain.group(2), span, scope);
    }
    if (braced.matches()) {
      return resolve(braced.group(1), braced.group(2), span, scope);
    }
    problems.add(refused(node, span));
    return Optional.empty();
  }

  private Optional<Ref> resolve(String root, String part, Span span, Scope scope) {
    Shape shape = scope.names().get(root);
    if (shape == null) {
      return unknown(root, scope.names().keySet(), "$", span);
    }
    if (part == null) {
      return Optional.of(new Ref(root, Optional.empty(), shape, span));
    }
    if (!(shape instanceof Shape.Parts parts)) {
      problems.add(
          error(span, "$" + root + " is " + shape.kind() + " and has no parts")
              .help("write $" + root + " without '." + part + "'"));
      return Optional.empty();
    }
    Shape inner = parts.parts().get(part);
    if (inner == null) {
      return unknown(part, parts.parts().keySet(), "$" + root + ".", span);
    }
    return Optional.of(new Ref(root, Optional.of(part), inner, span));
  }

  private Optional<Ref> unknown(String typed, Collection<String> known, String before, Span span) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.TEMPLATE_NAME, span, "there is no " + before + typed + " here")
            .help(advice(typed, known, before, span)));
    return Optional.empty();
  }

  private String advice(String typed, Collection<String> known, String before, Span span) {
    String underscored = withHyphens(typed, span).replace('-', '_').toLowerCase(Locale.ROOT);
    if (known.contains(underscored)) {
      return "names here have underscores: write " + before + underscored;
    }
    return Suggestion.nearest(underscored, known)
        .or(() -> Suggestion.nearest(typed, known))
        .map(name -> "did you mean " + before + name + "?")
        .orElseGet(() -> listed(known, before));
  }

  private static String listed(Collection<String> known, String before) {
    String names =
        known.stream()
            .limit(NAMES_SHOWN)
            .map(name -> before + name)
            .collect(java.util.stream.Collectors.joining(", "));
    return known.isEmpty()
        ? "nothing is named so here"
        : "these exist: " + names + (known.size() > NAMES_SHOWN ? " and more" : "");
  }

  /** The name as it was meant, when it was typed with hyphens, at which Velocity ends a name. */
  private static String withHyphens(String typed, Span span) {
    String text = span.source().text();
    int end = span.end();
    while (end < text.length() && isNamePart(text.charAt(end))) {
      end++;
    }
    return typed + text.substring(span.end(), end);
  }

  private static boolean isNamePart(char c) {
    return c == '-' || c == '_' || Character.isLetterOrDigit(c);
  }

  private Diagnostic refused(ASTReference node, Span span) {
    if (node.literal().contains("!")) {
      return error(span, "a quiet reference would hide a value that is missing")
          .help("write it without '!', inside #if($stated.name) ... #end");
    }
    if (has(node, ASTMethod.class)) {
      return error(span, "a template may not call methods").help("write a name only: $values.name");
    }
    if (has(node, ASTIndex.class)) {
      return error(span, "a template may not take one item out of a list")
          .help("repeat over the list: #foreach($item in $lists.name) ... #end");
    }
    return onlyNames(node)
        ? error(span, "a name has one part after its first, no more")
            .help("write $values.name or the like")
        : error(span, "'" + span.text() + "' is not a plain reference")
            .help("write $values.name or ${values.name}, and nothing in front of the dollar sign");
  }

  private static boolean has(Node node, Class<? extends Node> type) {
    for (int i = 0; i < node.jjtGetNumChildren(); i++) {
      if (type.isInstance(node.jjtGetChild(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean onlyNames(Node node) {
    boolean only = node.jjtGetNumChildren() > 1;
    for (int i = 0; i < node.jjtGetNumChildren(); i++) {
      only &= node.jjtGetChild(i) instanceof ASTIdentifier;
    }
    return only;
  }

  /** Where a node stands. */
  Span span(Node node) {
    Token last = node.getLastToken();
    return body.at(start(node), body.offset(last.endLine, last.endColumn) + 1);
  }

  /** Velocity says that a comparison begins at its operator; people begin at its left side. */
  private int start(Node node) {
    Token first = node.getFirstToken();
    int own = body.offset(first.beginLine, first.beginColumn);
    return node.jjtGetNumChildren() == 0 ? own : Math.min(own, start(node.jjtGetChild(0)));
  }

  static Diagnostic error(Span span, String message) {
    return Diagnostic.error(DiagnosticCode.TEMPLATE_FENCE, span, message);
  }

  /** The shapes behind a policy view's names, for guidance. */
  static Map<String, Shape> namesOf(PolicyView view) {
    return Map.of(
        "values", parts(view.stated().keySet(), Shape.Plain.WORDS),
        "stated", parts(view.stated().keySet(), Shape.Plain.FLAG),
        "lists", parts(view.lists().keySet(), new Shape.ListOf(Shape.Plain.WORDS)),
        "policy", parts(view.policy().keySet(), Shape.Plain.WORDS));
  }

  private static Shape parts(Collection<String> names, Shape each) {
    return new Shape.Parts(
        names.stream()
            .collect(
                java.util.stream.Collectors.toMap(
                    name -> name, name -> each, (a, b) -> a, java.util.TreeMap::new)));
  }
}
