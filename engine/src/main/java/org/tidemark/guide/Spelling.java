package org.tidemark.guide;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.source.Located;

/** Makes one spelling of the several that British, American and Australian readers use. */
final class Spelling {
  /** Below this length a word is too likely to be another word altogether: does, four, wise. */
  private static final int SHORTEST = 6;

  /** An ending, what it becomes, and the shortest word it may be cut from. */
  private record Ending(String from, String to, int shortest) {}

  private static final List<Ending> ENDINGS =
      List.of(
          new Ending("isation", "ization", 8),
          new Ending("isations", "izations", 8),
          new Ending("ising", "izing", 8),
          new Ending("ised", "ized", 7),
          new Ending("ises", "izes", 7),
          new Ending("ise", "ize", SHORTEST),
          new Ending("yse", "yze", SHORTEST),
          new Ending("ysed", "yzed", SHORTEST),
          new Ending("our", "or", SHORTEST),
          new Ending("ours", "ors", SHORTEST),
          new Ending("oured", "ored", SHORTEST),
          new Ending("tre", "ter", 5),
          new Ending("tres", "ters", 5),
          new Ending("bre", "ber", 5),
          new Ending("bres", "bers", 5),
          new Ending("vre", "ver", 5),
          new Ending("elled", "eled", 7),
          new Ending("elling", "eling", 7),
          new Ending("ogue", "og", SHORTEST));

  private final Map<String, String> listed = new HashMap<>();

  Spelling(List<Words.Group> groups) {
    for (Words.Group group : groups) {
      String first = byRule(lower(group.phrases().get(0)));
      group.phrases().forEach(word -> listed.put(lower(word), first));
    }
  }

  private static String lower(Located<String> word) {
    return word.value().toLowerCase(java.util.Locale.ROOT);
  }

  /** The one spelling of a word in small letters. */
  String unify(String word) {
    String found = listed.get(word);
    return found == null ? byRule(word) : found;
  }

  private static String byRule(String word) {
    String plain = word;
    if (word.length() >= SHORTEST) {
      plain = plain.replace("ae", "e").replace("oe", "e").replace("sulph", "sulf");
    }
    for (Ending ending : ENDINGS) {
      if (word.length() >= ending.shortest() && plain.endsWith(ending.from())) {
        return plain.substring(0, plain.length() - ending.from().length()) + ending.to();
      }
    }
    return plain;
  }
}
