package org.tidemark.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * Something that a policy decides. A layer may write only part of one.
 *
 * @param name its name, such as {@code use}
 * @param asks the question in words
 * @param words the question's own words for each outcome
 * @param speaksOf what must be spoken of before it can proceed
 * @param leftToHospital of these, what a floor leaves to the layers above it
 * @param after the question that must be answered with proceed before this one can be
 * @param rules its rules
 * @param place where it is written
 */
public record Question(
    String name,
    Optional<String> asks,
    Map<Outcome, String> words,
    Set<Axis> speaksOf,
    Set<Axis> leftToHospital,
    Optional<String> after,
    List<Rule> rules,
    Place place) {
  /** A question that comes after no other. */
  public Question(
      String name,
      Optional<String> asks,
      Map<Outcome, String> words,
      Set<Axis> speaksOf,
      Set<Axis> leftToHospital,
      List<Rule> rules,
      Place place) {
    this(name, asks, words, speaksOf, leftToHospital, Optional.empty(), rules, place);
  }

  public Question {
    words = Ordered.map(words);
    speaksOf = Ordered.set(speaksOf);
    leftToHospital = Ordered.set(leftToHospital);
    rules = List.copyOf(rules);
  }

  /** The same without one of its rules. */
  public Question without(String rule) {
    List<Rule> others = rules.stream().filter(r -> !r.name().equals(rule)).toList();
    return new Question(name, asks, words, speaksOf, leftToHospital, others, place);
  }
}
