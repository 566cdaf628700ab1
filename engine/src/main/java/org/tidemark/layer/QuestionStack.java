package org.tidemark.layer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Axis;
import org.tidemark.model.Condition;
import org.tidemark.model.Departure;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.Policy;
import org.tidemark.model.Question;
import org.tidemark.model.Rule;
import org.tidemark.model.Term;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/** Collects what the layers say of each question. */
final class QuestionStack {
  private final Problems problems;
  private final Departures departures;
  private final Map<String, List<Question>> parts = new LinkedHashMap<>();
  private final Map<String, Rule> rules = new LinkedHashMap<>();

  QuestionStack(Problems problems, Departures departures) {
    this.problems = problems;
    this.departures = departures;
  }

  void add(Policy layer) {
    List<String> below = List.copyOf(parts.keySet());
    departures
        .names(layer.name(), Departure.Kind.RULE)
        .forEach(rule -> leaveOut(layer.name(), rule));
    layer.questions().forEach(q -> isAsked(q, below));
    layer.questions().forEach(this::add);
  }

  /** A rule of a layer below that stops something, or takes force, and is not to apply here. */
  private void leaveOut(String layer, String named) {
    Rule rule = rules.get(named);
    if (rule == null || rule.effect() == Effect.ALLOW || rule.effect() == Effect.NOT_YET) {
      return;
    }
    parts.values().forEach(asked -> asked.replaceAll(q -> q.without(named)));
    departures.leftOut(layer, Departure.Kind.RULE, named, rule.place());
  }

  /**
   * Rules under a misspelt question would never be looked at; so a layer that means a new one gives
   * the words of its answers.
   */
  private void isAsked(Question question, List<String> below) {
    if (below.isEmpty() || below.contains(question.name()) || !question.words().isEmpty()) {
      return;
    }
    String name = question.name();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_QUESTION,
                question.place().span(),
                "no layer below asks `" + name + "`, and no words for its answers are given here")
            .help(
                Suggestion.nearest(name, below)
                    .map(near -> "did you mean `" + near + "`?")
                    .orElse(
                        "add `asks` and `words`, or write one of: " + String.join(", ", below))));
  }

  private void add(Question question) {
    List<Question> below = parts.computeIfAbsent(question.name(), n -> new ArrayList<>());
    comesAfterTheSame(question, below);
    for (Rule rule : question.rules()) {
      nameIsNew(rule);
      if (rule.effect() == Effect.ALLOW && !below.isEmpty()) {
        noNewWay(rule, below);
      }
    }
    below.add(question);
  }

  /** To come after another question instead could loosen; to come after one at all never does. */
  private void comesAfterTheSame(Question question, List<Question> below) {
    below.stream()
        .filter(q -> q.after().isPresent() && question.after().isPresent())
        .filter(q -> !q.after().equals(question.after()))
        .findFirst()
        .ifPresent(
            q ->
                problems.add(
                    Diagnostic.error(
                            DiagnosticCode.LOOSER_THAN_FLOOR,
                            question.place().span(),
                            "`"
                                + question.name()
                                + "` comes after `"
                                + question.after().orElseThrow()
                                + "` here, and after `"
                                + q.after().orElseThrow()
                                + "` in the layer below")
                        .and(q.place().span(), "the layer below has it here")
                        .help("delete `after`; that of the layer below holds")));
  }

  private void nameIsNew(Rule rule) {
    Rule first = rules.putIfAbsent(rule.name(), rule);
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.ALREADY_DEFINED,
                  rule.place().span(),
                  "the rule `" + rule.name() + "` is already defined")
              .and(first.place().span(), "it is defined here")
              .help("give yours another name; a layer adds rules and never replaces one"));
    }
  }

  /**
   * Any one allow rule is enough to proceed, so a further one must lie within one that the layers
   * below already have.
   */
  private void noNewWay(Rule rule, List<Question> below) {
    List<Rule> ways =
        below.stream()
            .flatMap(q -> q.rules().stream())
            .filter(r -> r.effect() == Effect.ALLOW)
            .toList();
    if (ways.isEmpty()
        || ways.stream().anyMatch(way -> Narrowing.within(rule.given(), way.given()))) {
      return;
    }
    departures.looser(
        rule.layer(),
        Departure.Kind.RULE,
        rule.name(),
        Optional.of(ways.get(0).place()),
        Diagnostic.error(
                DiagnosticCode.LOOSER_THAN_FLOOR,
                rule.place().span(),
                "`" + rule.name() + "` allows in a way that the layer below does not")
            .and(ways.get(0).place().span(), "the layer below allows in this way, among others")
            .help(
                "repeat the whole condition of one of its allow rules and add to it"
                    + Departures.OR_DECLARE));
  }

  /** A term that stops things may be widened; one that lets things pass may not. */
  void termIsWidened(String layer, Term term, Term below) {
    if (term.alternatives().equals(below.alternatives())) {
      return;
    }
    for (Rule rule : rules.values()) {
      if (rule.effect() != Effect.NOT_YET && loosens(rule, term.name())) {
        departures.looser(
            layer,
            Departure.Kind.TERM,
            term.name(),
            Optional.of(below.place()),
            Diagnostic.error(
                    DiagnosticCode.LOOSER_THAN_FLOOR,
                    term.place().span(),
                    "widening the term `"
                        + term.name()
                        + "` would loosen the rule `"
                        + rule.name()
                        + "`")
                .and(rule.place().span(), "the rule uses it here")
                .help("give the wider term another name" + Departures.OR_DECLARE));
      }
    }
  }

  private static boolean loosens(Rule rule, String term) {
    boolean letsPass = rule.effect() == Effect.ALLOW;
    return uses(rule.given(), term, letsPass);
  }

  static boolean uses(Condition condition, String term, boolean holds) {
    if (condition instanceof Condition.AllOf all) {
      return all.parts().stream().anyMatch(p -> uses(p, term, holds));
    }
    if (condition instanceof Condition.AnyOf any) {
      return any.alternatives().stream().anyMatch(p -> uses(p, term, holds));
    }
    if (condition instanceof Condition.SomeOf some) {
      return some.parts().stream().anyMatch(p -> uses(p, term, holds));
    }
    return condition instanceof Condition.TermIs is
        && is.term().equals(term)
        && is.holds() == holds;
  }

  List<EffectiveQuestion> effective(Map<String, String> calls) {
    return parts.entrySet().stream().map(e -> effective(e.getKey(), e.getValue(), calls)).toList();
  }

  private EffectiveQuestion effective(
      String name, List<Question> layers, Map<String, String> calls) {
    Map<Outcome, String> words = new EnumMap<>(Outcome.class);
    Set<Axis> speaksOf = EnumSet.noneOf(Axis.class);
    Set<Axis> open = EnumSet.noneOf(Axis.class);
    List<Rule> all = new ArrayList<>();
    String asks = name;
    for (Question layer : layers) {
      words.putAll(layer.words());
      speaksOf.addAll(layer.speaksOf());
      open.removeAll(spoken(layer.rules()));
      // Left to a layer above: what the layer that leaves it says itself does not close it.
      open.addAll(layer.leftToHospital());
      layer.rules().forEach(r -> all.add(withContact(r, calls)));
      asks = layer.asks().orElse(asks);
    }
    open.retainAll(speaksOf);
    Optional<String> after = layers.stream().flatMap(q -> q.after().stream()).findFirst();
    return new EffectiveQuestion(name, asks, words, speaksOf, open, all, all, after);
  }

  private static Set<Axis> spoken(List<Rule> rules) {
    Set<Axis> axes = EnumSet.noneOf(Axis.class);
    rules.forEach(r -> axes.add(r.about()));
    return axes;
  }

  private static Rule withContact(Rule rule, Map<String, String> calls) {
    Optional<String> contact = rule.contact().or(() -> Optional.ofNullable(calls.get(rule.name())));
    return new Rule(
        rule.name(),
        rule.layer(),
        rule.effect(),
        rule.about(),
        rule.given(),
        rule.which(),
        rule.says(),
        rule.tube(),
        rule.running(),
        contact,
        rule.winsOver(),
        rule.backing(),
        rule.place());
  }
}
