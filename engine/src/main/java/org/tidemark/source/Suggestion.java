package org.tidemark.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known name that a mistyped one most likely meant. */
public final class Suggestion {
  /** Nobody mistypes a name as long as this; comparing such with one another takes long. */
  private static final int LONGEST = 100;

  private Suggestion() {}

  /**
   * The nearest known name, if it is near enough that a slip of the hand explains the difference.
   */
  public static Optional<String> nearest(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    String word = typed.toLowerCase(Locale.ROOT);
    int near = word.length() <= 4 ? 1 : word.length() <= 8 ? 2 : 3;
    return known.stream()
        .filter(name -> Math.abs(word.length() - name.length()) <= near)
        .filter(name -> distance(word, name.toLowerCase(Locale.ROOT)) <= near)
        .min(
            Comparator.comparingInt((String name) -> distance(word, name.toLowerCase(Locale.ROOT)))
                .thenComparing(name -> name));
  }

  /** Insertions, deletions, replacements and swaps of neighbours between two words. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        d[i][j] = cheapest(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(int[][] d, String a, String b, int i, int j) {
    int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replace, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
