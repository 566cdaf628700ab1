package org.tidemark.print;

import static org.tidemark.print.Refs.error;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.velocity.runtime.parser.node.ASTDirective;
import org.apache.velocity.runtime.parser.node.ASTElseIfStatement;
import org.apache.velocity.runtime.parser.node.ASTElseStatement;
import org.apache.velocity.runtime.parser.node.ASTIfStatement;
import org.apache.velocity.runtime.parser.node.ASTReference;
import org.apache.velocity.runtime.parser.node.ASTText;
import org.apache.velocity.runtime.parser.node.Node;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * The first wall around templates: walks the parsed tree and lets through text, #if, #foreach over
 * known lists and plain references to known names. Whatever else Velocity can do, now or in a later
 * version, is refused because it is not on this list.
 */
final class TemplateFence {
  private static final int FOREACH_PARTS = 4;

  private final TemplateBody body;
  private final TemplateKind kind;
  private final Problems problems;
  private final Refs refs;
  private final Uses uses = new Uses();
  private final Conditions conditions;
  private final List<Span> seen = new ArrayList<>();

  TemplateFence(TemplateBody body, TemplateKind kind, Problems problems) {
    this.body = body;
    this.kind = kind;
    this.problems = problems;
    this.refs = new Refs(body, problems);
    this.conditions = new Conditions(refs, uses, problems);
  }

  /** Walks a whole template; what is wrong goes to the problems. */
  Uses walk(Node tree, Map<String, Shape> names) {
    children(tree, Scope.of(names));
    everyDollarIsAReference();
    return uses;
  }

  private void children(Node node, Scope scope) {
    for (int i = 0; i < node.jjtGetNumChildren(); i++) {
      visit(node.jjtGetChild(i), scope);
    }
  }

  private void visit(Node node, Scope scope) {
    if (node instanceof ASTReference reference) {
      printed(reference, scope);
    } else if (node instanceof ASTIfStatement) {
      branches(node, scope);
    } else if (node instanceof ASTDirective directive && isForeach(directive)) {
      loop(node, scope);
    } else if (!(node instanceof ASTText)) {
      refuse(node);
    }
  }

  private static boolean isForeach(ASTDirective directive) {
    return directive.getDirectiveName().equals("foreach");
  }

  private void refuse(Node node) {
    Span span = refs.span(node);
    seen.add(span);
    problems.add(
        error(span, "this may not stand in a template")
            .help(
                "a template has text, names such as $values.name, #if and #foreach, nothing else"));
  }

  private void printed(ASTReference node, Scope scope) {
    seen.add(refs.span(node));
    refs.read(node, scope).ifPresent(ref -> printed(ref, scope));
  }

  private void printed(Refs.Ref ref, Scope scope) {
    uses.add(ref, scope);
    if (ref.shape() != Shape.Plain.WORDS) {
      problems.add(
          error(ref.span(), "this is " + ref.shape().kind() + ", which cannot be printed")
              .help(howToUse(ref.shape())));
    }
    if (kind == TemplateKind.GUIDANCE && insideLinkTarget(ref.span())) {
      problems.add(
          error(ref.span(), "a value may not decide where a link leads")
              .help("write the link's target out"));
    }
  }

  private static String howToUse(Shape shape) {
    if (shape == Shape.Plain.FLAG) {
      return "ask for it: #if($stated.name) ... #end";
    }
    return shape instanceof Shape.ListOf
        ? "repeat over it: #foreach($item in $lists.name) ... #end"
        : "name one of its parts, such as $values.name";
  }

  private boolean insideLinkTarget(Span ref) {
    String text = body.span().text();
    int at = ref.start() - body.span().start();
    int line = Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;
    String before = text.substring(line, at);
    int target = before.lastIndexOf("](");
    return (target >= 0 && before.indexOf(')', target) < 0) || before.endsWith("<");
  }

  private void branches(Node node, Scope scope) {
    Scope here = scope;
    Conditions.Known known = conditions.read(condition(node), here);
    children(node.jjtGetChild(1), here.with(known.ifTrue()));
    for (int i = 2; i < node.jjtGetNumChildren(); i++) {
      here = here.with(known.ifFalse());
      Node branch = node.jjtGetChild(i);
      if (branch instanceof ASTElseIfStatement) {
        known = conditions.read(condition(branch), here);
        children(branch.jjtGetChild(1), here.with(known.ifTrue()));
      } else if (branch instanceof ASTElseStatement) {
        children(branch.jjtGetChild(0), here);
      } else {
        refuse(branch);
      }
    }
  }

  private Node condition(Node statement) {
    Node condition = statement.jjtGetChild(0);
    seen.add(refs.span(statement.jjtGetChild(0)));
    return condition;
  }

  private void loop(Node node, Scope scope) {
    if (node.jjtGetNumChildren() != FOREACH_PARTS
        || !(node.jjtGetChild(0) instanceof ASTReference name)
        || !(node.jjtGetChild(2) instanceof ASTReference list)) {
      seen.add(refs.span(node));
      problems.add(
          error(refs.span(node), "#foreach repeats over a known list, and over nothing else")
              .help("write #foreach($item in $lists.name) ... #end, without #else"));
      return;
    }
    seen.add(refs.span(name));
    seen.add(refs.span(list));
    if (scope.loops() >= kind.loopsDeep) {
      problems.add(
          error(refs.span(name), "too many #foreach stand inside one another")
              .help("at most " + kind.loopsDeep + " may"));
    }
    Shape item = items(list, scope).orElse(Shape.Plain.WORDS);
    children(node.jjtGetChild(3), scope.inLoop(fresh(name, scope), item));
  }

  private Optional<Shape> items(ASTReference list, Scope scope) {
    Optional<Refs.Ref> ref = refs.read(list, scope);
    if (ref.isPresent() && !(ref.get().shape() instanceof Shape.ListOf)) {
      problems.add(
          error(ref.get().span(), "this is " + ref.get().shape().kind() + ", not a list")
              .help("#foreach repeats over a list"));
    }
    return ref.map(Refs.Ref::shape)
        .map(shape -> shape instanceof Shape.ListOf of ? of.of() : Shape.Plain.WORDS);
  }

  private String fresh(ASTReference name, Scope scope) {
    String typed = name.literal();
    String bare = typed.startsWith("$") ? typed.substring(1) : typed;
    if (!bare.matches("[A-Za-z][A-Za-z0-9_]*")) {
      problems.add(
          error(refs.span(name), "the item of a #foreach has a plain name")
              .help("write it like $step"));
    } else if (scope.names().containsKey(bare) || bare.equals("foreach")) {
      problems.add(
          error(refs.span(name), "the name $" + bare + " is already taken")
              .help("give the item a name of its own"));
    }
    return bare;
  }

  private void everyDollarIsAReference() {
    String text = body.text();
    for (int i = text.indexOf('$'); i >= 0; i = text.indexOf('$', i + 1)) {
      Span at = body.at(i, i + 1);
      if (seen.stream().noneMatch(s -> s.start() <= at.start() && at.start() < s.end())) {
        problems.add(
            error(at, "a dollar sign stands here and names nothing")
                .help("a dollar sign begins a name, such as $values.name"));
      }
    }
  }
}
