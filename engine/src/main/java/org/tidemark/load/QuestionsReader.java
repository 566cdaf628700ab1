package org.tidemark.load;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Axis;
import org.tidemark.model.Outcome;
import org.tidemark.model.Question;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Reads what a policy decides. */
final class QuestionsReader {
  private final String layer;
  private final Known known;
  private final Wording wording;
  private final Backings backings;
  private final Problems problems;
  private final Names questions;
  private final Names rules;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Map<String, Located<String>> afters = new LinkedHashMap<>();

  QuestionsReader(
      String layer, Known known, Wording wording, Backings backings, Problems problems) {
    this.layer = layer;
    this.known = known;
    this.wording = wording;
    this.backings = backings;
    this.problems = problems;
    this.questions = new Names("question", problems);
    this.rules = new Names("rule", problems);
  }

  List<Question> read(Fields policy) {
    policy.required("questions");
    asked.addAll(known.questions());
    asked.addAll(policy.names("questions"));
    List<Question> questions = policy.named("questions", this::question);
    afters.forEach((name, after) -> afterItself(name, after, new LinkedHashSet<>()));
    return questions;
  }

  /** Follows what each question comes after, as far as this file says it. */
  private void afterItself(String name, Located<String> after, Set<String> seen) {
    Located<String> next = after;
    while (next != null && seen.add(next.value())) {
      next = afters.get(next.value());
    }
    if (seen.contains(name)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.COMES_AFTER_ITSELF,
                  after.span(),
                  "`" + name + "` comes after itself in the end")
              .help("let one question come after no other"));
    }
  }

  private Question question(YamlMap.Entry entry) {
    String name = entry.key().text();
    questions.give(name, entry.key().span());
    Fields fields = Fields.of(entry.value(), "the question `" + name + "`", problems);
    Optional<String> asks = fields.optionalText("asks").map(Located::value);
    Map<Outcome, String> words = words(fields);
    Set<Axis> speaksOf = axes(fields, "speaks-of");
    Set<Axis> left = axes(fields, "left-to-hospital");
    Optional<Located<String>> after = fields.optionalText("after");
    after.filter(a -> !asked.contains(a.value())).ifPresent(this::unknown);
    after.ifPresent(a -> afters.put(name, a));
    RuleReader reader = new RuleReader(layer, known, wording, backings, rules, problems);
    List<RuleReader.Unchecked> read = fields.list("rules", reader::read);
    fields.done();
    read.forEach(r -> known.learn(name, r.rule()));
    read.forEach(r -> reader.checkNames(name, r));
    return new Question(
        name,
        asks,
        words,
        speaksOf,
        left,
        after.map(Located::value),
        read.stream().map(RuleReader.Unchecked::rule).toList(),
        Place.at(entry.key().span()));
  }

  private void unknown(Located<String> after) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_QUESTION,
                after.span(),
                "no question is called `" + after.value() + "`")
            .help(Fields.suggest(after.value(), List.copyOf(asked))));
  }

  private Map<Outcome, String> words(Fields question) {
    Map<Outcome, String> words = new EnumMap<>(Outcome.class);
    Optional<YamlNode> node = question.optional("words");
    if (node.isPresent()) {
      Fields fields = Fields.of(node.get(), "`words`", problems);
      for (Outcome outcome : Outcome.values()) {
        words.put(outcome, fields.text(outcome.word()).value());
      }
      fields.done();
    }
    return words;
  }

  private Set<Axis> axes(Fields fields, String key) {
    Optional<YamlNode> node = fields.optional(key);
    if (node.isPresent() && node.get() instanceof YamlText text && text.text().equals("all")) {
      return EnumSet.allOf(Axis.class);
    }
    List<Axis> axes = new ArrayList<>();
    fields.texts(key).forEach(t -> fields.constant(t, Axis.class, key).ifPresent(axes::add));
    return axes.isEmpty() ? EnumSet.noneOf(Axis.class) : EnumSet.copyOf(axes);
  }
}
