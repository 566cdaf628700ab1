package org.tidemark.layer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Axis;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.source.Ordered;

/**
 * A question with the rules of all layers, and with those of the question that it comes after: what
 * stops that one stops this one, and this one is allowed where both are.
 *
 * @param name its name
 * @param asks the question in words
 * @param words its own words for each outcome
 * @param speaksOf what must be spoken of before it can proceed
 * @param open of these, what no layer has spoken of yet; while there is one, it cannot proceed
 * @param rules the rules of all layers, the lowest layer's first
 * @param own of these, the rules that were written for this very question
 * @param after the question that it comes after
 */
public record EffectiveQuestion(
    String name,
    String asks,
    Map<Outcome, String> words,
    Set<Axis> speaksOf,
    Set<Axis> open,
    List<Rule> rules,
    List<Rule> own,
    Optional<String> after) {
  /** A question that comes after no other. */
  public EffectiveQuestion(
      String name,
      String asks,
      Map<Outcome, String> words,
      Set<Axis> speaksOf,
      Set<Axis> open,
      List<Rule> rules) {
    this(name, asks, words, speaksOf, open, rules, rules, Optional.empty());
  }

  public EffectiveQuestion {
    words = Ordered.map(words);
    speaksOf = Ordered.set(speaksOf);
    open = Ordered.set(open);
    rules = List.copyOf(rules);
    own = List.copyOf(own);
  }

  public List<Rule> rules(Effect effect) {
    return rules.stream().filter(r -> r.effect() == effect).toList();
  }

  public Optional<Rule> rule(String wanted) {
    return rules.stream().filter(r -> r.name().equals(wanted)).findFirst();
  }

  /** The question's own word for an outcome. */
  public String word(Outcome outcome) {
    return words.getOrDefault(outcome, outcome.word());
  }
}
