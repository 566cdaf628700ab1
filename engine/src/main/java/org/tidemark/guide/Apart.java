package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Words that never stand in for one another; the beginnings hypo and hyper part longer words too.
 */
final class Apart {
  private static final int LONGEST_BEGINNING = 5;

  private final List<List<String>> groups = new ArrayList<>();

  Apart(Words words) {
    for (Words.Group group : words.apart()) {
      groups.add(group.phrases().stream().map(w -> w.value().toLowerCase(Locale.ROOT)).toList());
    }
  }

  /** Whether one may not be taken for the other. */
  boolean separates(String one, String other) {
    return groups.stream().anyMatch(group -> separates(group, one, other));
  }

  private static boolean separates(List<String> group, String one, String other) {
    int left = member(group, one);
    int right = member(group, other);
    return left >= 0 && right >= 0 && left != right;
  }

  /** Which of a group's words this is or begins with; the longest when several fit. */
  private static int member(List<String> group, String word) {
    int found = -1;
    for (int i = 0; i < group.size(); i++) {
      String candidate = group.get(i);
      boolean beginning =
          candidate.length() <= LONGEST_BEGINNING
              && candidate.length() >= 4
              && word.startsWith(candidate);
      if (word.equals(candidate) || beginning) {
        found = found < 0 || candidate.length() > group.get(found).length() ? i : found;
      }
    }
    return found;
  }

  boolean anyTwoIn(List<String> words) {
    return words.stream().anyMatch(one -> words.stream().anyMatch(other -> separates(one, other)));
  }

  /** Reports words that the chain makes alike although they must stay apart. */
  static void tryOut(Words words, GuideAnalyzer texts, Problems problems) {
    for (Words.Group group : words.apart()) {
      for (Located<String> one : group.phrases()) {
        group.phrases().stream()
            .filter(other -> !other.value().equals(one.value()))
            .filter(other -> alike(texts, one, other))
            .findFirst()
            .ifPresent(other -> problems.add(merged(one, other)));
      }
    }
  }

  private static boolean alike(GuideAnalyzer texts, Located<String> one, Located<String> other) {
    return Terms.words(texts, one.value()).equals(Terms.words(texts, other.value()));
  }

  private static Diagnostic merged(Located<String> one, Located<String> other) {
    return Diagnostic.error(
            DiagnosticCode.DEAD_WORD,
            one.span(),
            "`" + one.value() + "` and `" + other.value() + "` come out as one word")
        .help("add both to `keep`, so that their endings stay");
  }
}
