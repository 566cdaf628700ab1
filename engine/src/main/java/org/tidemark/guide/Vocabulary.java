package org.tidemark.guide;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.util.automaton.CharacterRunAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;
import org.apache.lucene.util.automaton.Operations;

/** Every word that a text or the word list holds, and the near ones of a word that none holds. */
final class Vocabulary {
  /** A shorter word is an abbreviation or too near to too many others. */
  static final int SHORTEST = 5;

  private static final int LONG = 8;

  private final Map<String, Integer> seen = new HashMap<>();
  private final Apart apart;

  Vocabulary(Apart apart) {
    this.apart = apart;
  }

  void add(Collection<String> words) {
    words.forEach(word -> seen.merge(word, 1, Integer::sum));
  }

  boolean knows(String word) {
    return seen.containsKey(word);
  }

  /** The word that a mistyped one most likely meant; none when that cannot be told. */
  Optional<String> nearest(String word) {
    if (word.length() < SHORTEST || knows(word) || !word.chars().allMatch(Character::isLetter)) {
      return Optional.empty();
    }
    List<String> near = within(word, 1);
    if (near.isEmpty() && word.length() >= LONG) {
      near = within(word, 2);
    }
    // When the slip may have hit either of two words that mean different things, nobody guesses.
    return apart.anyTwoIn(near) ? Optional.empty() : near.stream().findFirst();
  }

  private List<String> within(String word, int slips) {
    CharacterRunAutomaton near =
        new CharacterRunAutomaton(
            Operations.determinize(
                new LevenshteinAutomata(word, true).toAutomaton(slips),
                Operations.DEFAULT_DETERMINIZE_WORK_LIMIT));
    String first = word.substring(0, 1);
    return seen.keySet().stream()
        .filter(known -> known.startsWith(first) && known.length() >= SHORTEST && near.run(known))
        .filter(known -> !apart.separates(word, known))
        .sorted(
            Comparator.comparing((String known) -> -seen.getOrDefault(known, 0))
                .thenComparing(known -> known))
        .toList();
  }
}
