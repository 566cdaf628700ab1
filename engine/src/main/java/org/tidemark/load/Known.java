package org.tidemark.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Barred;
import org.tidemark.model.Effect;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.model.Vocabulary;

/** The names that a policy may use: the vocabulary's, its own, and those of the layers below it. */
final class Known {
  private final Vocabulary vocabulary;
  private final DeclaredNumbers numbers;
  private final Map<String, PolicyValue> values = new HashMap<>();
  private final Map<String, String> bands = new HashMap<>();
  private final List<String> terms = new ArrayList<>();
  private final Map<String, Barred> barred = new LinkedHashMap<>();
  private final List<String> contacts = new ArrayList<>();
  private final Map<String, Map<String, Effect>> rules = new HashMap<>();
  private final Map<String, String> stepSays = new HashMap<>();
  private final List<String> questions = new ArrayList<>();

  Known(Vocabulary vocabulary, List<Policy> below) {
    this.vocabulary = vocabulary;
    this.numbers = new DeclaredNumbers(vocabulary);
    below.forEach(this::learn);
  }

  private void learn(Policy policy) {
    policy.values().forEach(this::learn);
    policy.bands().forEach(this::learn);
    policy.terms().forEach(term -> terms.add(term.name()));
    policy.barred().forEach(this::learn);
    policy.care().contacts().forEach(contact -> contacts.add(contact.name()));
    policy.questions().forEach(q -> questions.add(q.name()));
    policy.questions().forEach(q -> q.rules().forEach(rule -> learn(q.name(), rule)));
    policy
        .care()
        .fallbacks()
        .forEach(
            f ->
                f.steps()
                    .forEach(s -> s.alternatives().forEach(a -> stepSays.put(a.name(), a.says()))));
  }

  void learn(PolicyValue value) {
    values.merge(value.name(), value, (below, above) -> above.aboutTheSameAs(below));
    numbers.learn(value);
  }

  void learn(NamedBand band) {
    bands.put(band.name(), band.of());
    numbers.learn(band, vocabulary);
  }

  void learn(Barred test) {
    barred.putIfAbsent(test.finding(), test);
  }

  /** The tests that must not count, of this policy and of the layers below it. */
  List<Barred> barred() {
    return List.copyOf(barred.values());
  }

  void learnTerm(String name) {
    terms.add(name);
  }

  void learnContact(String name) {
    contacts.add(name);
  }

  void learn(String question, Rule rule) {
    rules.computeIfAbsent(question, q -> new HashMap<>()).putIfAbsent(rule.name(), rule.effect());
  }

  DeclaredNumbers numbers() {
    return numbers;
  }

  /** The questions that the layers below ask. */
  List<String> questions() {
    return List.copyOf(questions);
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }

  Optional<PolicyValue> value(String name) {
    return Optional.ofNullable(values.get(name));
  }

  /** The value that says how far readings of a finding may be off. */
  Optional<PolicyValue> howFarOff(String finding) {
    return values.values().stream()
        .filter(v -> v.howFarOff().equals(Optional.of(finding)))
        .findFirst();
  }

  List<String> valueNames() {
    return values.keySet().stream().sorted().toList();
  }

  boolean bandOf(String name, String finding) {
    return finding.equals(bands.get(name));
  }

  List<String> bandsOf(String finding) {
    return bands.entrySet().stream()
        .filter(e -> e.getValue().equals(finding))
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  List<String> bandNames() {
    return bands.keySet().stream().sorted().toList();
  }

  boolean isTerm(String name) {
    return terms.contains(name);
  }

  List<String> findingsAndTerms() {
    List<String> all = new ArrayList<>(vocabulary.names());
    all.addAll(terms);
    return all;
  }

  List<String> contacts() {
    return List.copyOf(contacts);
  }

  boolean isRule(String name) {
    return rules.values().stream().anyMatch(r -> r.containsKey(name));
  }

  List<String> ruleNames() {
    return rules.values().stream().flatMap(r -> r.keySet().stream()).sorted().toList();
  }

  Map<String, Effect> rulesOf(String question) {
    return rules.getOrDefault(question, Map.of());
  }

  /**
   * What a step of that name says in a layer below, so that a layer above need not say it again.
   */
  Optional<String> stepSays(String step) {
    return Optional.ofNullable(stepSays.get(step));
  }
}
