package org.tidemark.layer;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.model.Condition;
import org.tidemark.model.Scope;

/** What there is to ask of whom a policy is for. */
final class Scopes {
  private Scopes() {}

  /** The options of a finding that a policy is for; empty if it is for all of them. */
  static Optional<Set<String>> covered(Scope scope, String finding) {
    return scope.covers().stream()
        .filter(c -> c.finding().equals(finding))
        .map(Condition.Options::options)
        .findFirst();
  }

  /** The same without those that it shuts out. */
  static Optional<Set<String>> left(Scope scope, String finding) {
    return covered(scope, finding).map(all -> without(all, scope, finding));
  }

  private static Set<String> without(Set<String> all, Scope scope, String finding) {
    Set<String> left = new TreeSet<>(all);
    scope.excludes().stream()
        .map(Scope.Exclusion::what)
        .filter(x -> x.finding().equals(finding))
        .forEach(x -> left.removeAll(x.options()));
    return left;
  }

  /** Whether some patient is covered by both. */
  static boolean meet(Scope one, Scope other) {
    return one.covers().stream().allMatch(c -> meet(one, other, c.finding()))
        && isOpenTo(one, other)
        && isOpenTo(other, one);
  }

  private static boolean meet(Scope one, Scope other, String finding) {
    Optional<Set<String>> mine = left(one, finding);
    Optional<Set<String>> theirs = left(other, finding);
    return mine.isEmpty()
        || theirs.isEmpty()
        || mine.get().stream().anyMatch(theirs.get()::contains);
  }

  /** Whether the other is not wholly for patients that the first shuts out. */
  private static boolean isOpenTo(Scope one, Scope other) {
    return one.excludes().stream()
        .map(Scope.Exclusion::what)
        .noneMatch(x -> covered(other, x.finding()).filter(x.options()::containsAll).isPresent());
  }
}
