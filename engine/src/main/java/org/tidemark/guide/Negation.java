package org.tidemark.guide;

import java.util.Set;

/** Knows the ways of writing "not" into another word, with its apostrophe or without. */
final class Negation {
  /** What each of them becomes. */
  static final String NOT = "not";

  private static final Set<String> CONTRACTIONS =
      Set.of(
          "cant",
          "cannot",
          "wont",
          "dont",
          "doesnt",
          "didnt",
          "isnt",
          "arent",
          "aint",
          "wasnt",
          "werent",
          "hasnt",
          "havent",
          "hadnt",
          "couldnt",
          "wouldnt",
          "shouldnt",
          "mustnt",
          "neednt",
          "shant",
          "mightnt");

  private static final Set<String> DENIALS = Set.of(NOT, "no", "without", "never");

  private Negation() {}

  /** Whether a word denies what follows it. */
  static boolean is(String word) {
    return DENIALS.contains(word);
  }

  /** The word, or "not" when it is a contraction of it. */
  static String unify(String word) {
    String bare = word.replace("'", "").replace("\u2019", "");
    return CONTRACTIONS.contains(bare) ? NOT : word;
  }
}
