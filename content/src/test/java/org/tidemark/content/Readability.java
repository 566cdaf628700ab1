package org.tidemark.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How many years of school English a text asks for. */
final class Readability {
  private static final String VOWELS = "aeiouy";

  private Readability() {}

  static double grade(String markdown) {
    String text = plain(markdown);
    List<String> words =
        Arrays.stream(text.split("[^A-Za-z']+")).filter(w -> !w.isEmpty()).toList();
    long sentences =
        Math.max(1, text.chars().filter(c -> c == '.' || c == '?' || c == '!').count());
    int syllables = words.stream().mapToInt(Readability::syllables).sum();
    return 0.39 * words.size() / sentences + 11.8 * syllables / words.size() - 15.59;
  }

  /**
   * The words only: no template, citation, number of a step, or heading. A line that ends without a
   * stop ends a sentence all the same.
   */
  private static String plain(String markdown) {
    return markdown
        .replaceAll("#(?:if|elseif|foreach)\\([^)]*\\)|#\\{?(?:else|end)\\}?", " ")
        .replaceAll("\\$[a-z_.]+[a-z_]", "it")
        .replaceAll("\\[[^\\]]*\\]", "")
        .replaceAll("(?m)^#+ .*$", "")
        .replaceAll("(?m)^[0-9]+\\. |^- ", "")
        .replaceAll("(?m)([^.?!:\\s])\\s*$", "$1.")
        .replaceAll("[.?!]+", ".");
  }

  /** Groups of vowels, less a silent e at the end; at least one. */
  private static int syllables(String word) {
    String w = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    int count = 0;
    for (int i = 0; i < w.length(); i++) {
      boolean vowel = VOWELS.indexOf(w.charAt(i)) >= 0;
      boolean before = i > 0 && VOWELS.indexOf(w.charAt(i - 1)) >= 0;
      count += vowel && !before ? 1 : 0;
    }
    boolean silent = w.endsWith("e") && !w.endsWith("le") && count > 1;
    return Math.max(1, silent ? count - 1 : count);
  }
}
