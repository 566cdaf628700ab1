package org.tidemark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.load.PolicyLoader;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Holds that a name belongs to one policy: answers are stamped with it, and nobody would see that
 * another policy had taken its place. A copy to the letter is the same policy.
 */
final class OneOwner {
  private OneOwner() {}

  /** The first of those that were found by a name, if nothing else bears that name. */
  static Loaded<Copy> of(String name, List<Loaded<Copy>> found) {
    Problems problems = new Problems();
    List<Copy> copies = new ArrayList<>();
    for (Loaded<Copy> one : found) {
      problems.addAll(one.diagnostics());
      one.match(copies::add, broken -> false);
    }
    if (!copies.isEmpty()) {
      Copy first = copies.get(0);
      otherName(name, first).ifPresent(problems::add);
      copies.stream()
          .filter(other -> !other.sameTextAs(first))
          .forEach(other -> problems.add(taken(name, first, other)));
    }
    return problems.conclude(() -> copies.get(0));
  }

  private static Optional<Diagnostic> otherName(String name, Copy copy) {
    Optional<Located<String>> own = PolicyLoader.named(copy.tree());
    return own.filter(given -> !given.value().equals(name))
        .map(
            given ->
                Diagnostic.error(
                        DiagnosticCode.FOLDER_NAME,
                        given.span(),
                        "the folder is called `"
                            + name
                            + "`, and the policy in it `"
                            + given.value()
                            + "`")
                    .help("give both the same name; others find the policy by it"));
  }

  /** What to say when a file that was asked for by its path bears the name of a shipped policy. */
  static Optional<Diagnostic> namesake(Copy copy, Optional<Copy> shipped) {
    return shipped
        .filter(other -> !other.sameTextAs(copy))
        .map(
            other ->
                Diagnostic.warning(
                        DiagnosticCode.DUPLICATE_NAME,
                        copy.name(),
                        "this file bears the name of a policy that is shipped, and differs from it")
                    .and(other.name(), "the shipped one stands here")
                    .help(
                        "give your own policy a name of its own, so that answers show which it was"));
  }

  private static Diagnostic taken(String name, Copy first, Copy other) {
    String rival = other.shipped() ? "a policy that is shipped" : "another policy";
    return Diagnostic.error(
            DiagnosticCode.DUPLICATE_NAME,
            first.name(),
            "`" + name + "` is also the name of " + rival + ", and the two differ")
        .and(other.name(), "the other `" + name + "` stands here")
        .help(
            "give your own policy a name of its own, and its folder too; a name belongs to one policy");
  }
}
