package org.tidemark.print;

import static org.tidemark.print.Refs.error;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.velocity.runtime.parser.node.ASTAndNode;
import org.apache.velocity.runtime.parser.node.ASTEQNode;
import org.apache.velocity.runtime.parser.node.ASTExpression;
import org.apache.velocity.runtime.parser.node.ASTNENode;
import org.apache.velocity.runtime.parser.node.ASTNotNode;
import org.apache.velocity.runtime.parser.node.ASTOrNode;
import org.apache.velocity.runtime.parser.node.ASTReference;
import org.apache.velocity.runtime.parser.node.ASTStringLiteral;
import org.apache.velocity.runtime.parser.node.Node;
import org.tidemark.source.Problems;

/** Reads the conditions of a template, and which values are sure to be stated when one holds. */
final class Conditions {
  /** Longer conditions nest deeper than a reader, or a parser, can follow. */
  static final int DEEPEST = 20;

  private final Refs refs;
  private final Uses uses;
  private final Problems problems;

  Conditions(Refs refs, Uses uses, Problems problems) {
    this.refs = refs;
    this.uses = uses;
    this.problems = problems;
  }

  /**
   * What is known after a condition.
   *
   * @param ifTrue values that are stated when it holds
   * @param ifFalse values that are stated when it does not
   */
  record Known(Set<String> ifTrue, Set<String> ifFalse) {
    static final Known NOTHING = new Known(Set.of(), Set.of());

    Known not() {
      return new Known(/* ifTrue= */ ifFalse, /* ifFalse= */ ifTrue);
    }

    Known and(Known other) {
      return new Known(both(ifTrue, other.ifTrue), common(ifFalse, other.ifFalse));
    }

    private static Set<String> both(Set<String> a, Set<String> b) {
      Set<String> out = new TreeSet<>(a);
      out.addAll(b);
      return out;
    }

    private static Set<String> common(Set<String> a, Set<String> b) {
      Set<String> out = new TreeSet<>(a);
      out.retainAll(b);
      return out;
    }
  }

  Known read(Node node, Scope scope) {
    return read(node, scope, 0);
  }

  private Known read(Node node, Scope scope, int depth) {
    if (depth > DEEPEST) {
      problems.add(error(refs.span(node), "the condition is nested too deep").help("split it up"));
      return Known.NOTHING;
    }
    if (node instanceof ASTExpression && node.jjtGetNumChildren() == 1) {
      return read(node.jjtGetChild(0), scope, depth + 1);
    }
    if (node instanceof ASTReference reference) {
      return asked(reference, scope);
    }
    if (node instanceof ASTNotNode) {
      return read(node.jjtGetChild(0), scope, depth + 1).not();
    }
    return node instanceof ASTAndNode || node instanceof ASTOrNode
        ? joined(node, scope, depth + 1)
        : compared(node, scope);
  }

  private Known joined(Node node, Scope scope, int depth) {
    boolean and = node instanceof ASTAndNode;
    Known left = read(node.jjtGetChild(0), scope, depth);
    // The right side is looked at only when the left one has held (and) or failed (or).
    Scope after = scope.with(and ? left.ifTrue() : left.ifFalse());
    Known right = read(node.jjtGetChild(1), after, depth);
    return and ? left.and(right) : left.not().and(right.not()).not();
  }

  private Known asked(ASTReference reference, Scope scope) {
    Optional<Refs.Ref> read = refs.read(reference, scope);
    read.ifPresent(ref -> uses.add(ref, scope));
    return read.filter(ref -> ref.opens("stated"))
        .flatMap(Refs.Ref::part)
        .map(name -> new Known(Set.of(name), Set.of()))
        .orElse(Known.NOTHING);
  }

  private Known compared(Node node, Scope scope) {
    if (!(node instanceof ASTEQNode || node instanceof ASTNENode)) {
      problems.add(
          error(refs.span(node), "this may not stand in a condition")
              .help(
                  "a condition asks for names with &&, || and !, or compares one with a text in"
                      + " single quotes by == or !="));
      return Known.NOTHING;
    }
    for (Node side : List.of(node.jjtGetChild(0), node.jjtGetChild(1))) {
      side(side, scope);
    }
    if (count(node, ASTReference.class) == 2 || count(node, ASTStringLiteral.class) == 2) {
      problems.add(
          error(refs.span(node), "a comparison has a name on one side and a text on the other")
              .help("write it like $policy.edition == '3'"));
    }
    return Known.NOTHING;
  }

  private static int count(Node node, Class<? extends Node> type) {
    return (type.isInstance(node.jjtGetChild(0)) ? 1 : 0)
        + (type.isInstance(node.jjtGetChild(1)) ? 1 : 0);
  }

  private void side(Node side, Scope scope) {
    if (side instanceof ASTReference reference) {
      refs.read(reference, scope).ifPresent(ref -> comparable(ref, scope));
    } else if (!(side instanceof ASTStringLiteral) || !isPlain(side)) {
      problems.add(
          error(refs.span(side), "a name can be compared only with a plain text in single quotes")
              .help("a number in a condition would decide again what the policy has decided"));
    }
  }

  private void comparable(Refs.Ref ref, Scope scope) {
    uses.add(ref, scope);
    if (ref.shape() != Shape.Plain.WORDS) {
      problems.add(
          error(ref.span(), "this is " + ref.shape().kind() + ", which cannot be compared")
              .help("ask for it alone: #if($name)"));
    }
  }

  /** A text in double quotes is a template of its own to Velocity. */
  private static boolean isPlain(Node literal) {
    String typed = literal.getFirstToken().image;
    return typed.startsWith("'") && typed.indexOf('$') < 0 && typed.indexOf('#') < 0;
  }
}
