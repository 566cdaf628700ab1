package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.tidemark.model.Condition;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.model.Statement;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/** Reads what a policy says is always so, and what is never. */
final class StatementsReader {
  private final String layer;
  private final Known known;
  private final Wording wording;
  private final Backings backings;
  private final Problems problems;
  private final Names names;

  StatementsReader(
      String layer, Known known, Wording wording, Backings backings, Problems problems) {
    this.layer = layer;
    this.known = known;
    this.wording = wording;
    this.backings = backings;
    this.problems = problems;
    this.names = new Names("statement", problems);
  }

  /**
   * Reads both lists.
   *
   * @param asked the questions of this policy and of those below it
   */
  List<Statement> read(Fields policy, Set<String> asked) {
    List<Statement> all = new ArrayList<>();
    for (Statement.Mode mode : Statement.Mode.values()) {
      all.addAll(policy.list(mode.word(), node -> statement(node, mode, asked)));
    }
    return List.copyOf(all);
  }

  private Statement statement(YamlNode node, Statement.Mode mode, Set<String> asked) {
    String what = "a statement of what is " + mode.name().toLowerCase(Locale.ROOT) + " so";
    Fields fields = Fields.of(node, what, problems);
    Located<String> name = fields.text("statement");
    names.give(name.value(), name.span());
    Located<String> question = fields.text("question");
    isAsked(question, asked);
    Condition given =
        fields
            .required("given")
            .<Condition>map(n -> new ConditionReader(known, problems).given(n))
            .orElseGet(() -> new Condition.AllOf(List.of()));
    Outcome answer = fields.requiredWord("answer", Outcome.class).orElse(Outcome.PROCEED);
    String says = wording.required(fields, "says");
    Optional<String> because = wording.optional(fields, "because");
    Rule.Backing backing = backings.read(fields);
    if (because.isEmpty() && backing.sources().isEmpty()) {
      noReason(name);
    }
    fields.done();
    return new Statement(
        name.value(),
        layer,
        mode,
        question.value(),
        given,
        answer,
        says,
        because,
        backing,
        Place.at(name.span()));
  }

  private void isAsked(Located<String> question, Set<String> asked) {
    Optional.of(question)
        .filter(q -> !q.value().isEmpty())
        .filter(Predicate.not(q -> asked.contains(q.value())))
        .ifPresent(
            q ->
                problems.add(
                    Diagnostic.error(
                            DiagnosticCode.UNKNOWN_QUESTION,
                            q.span(),
                            "this policy and those below it ask no question `" + q.value() + "`")
                        .help(Fields.suggest(q.value(), List.copyOf(asked)))));
  }

  private void noReason(Located<String> name) {
    if (!name.value().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.MISSING_KEY,
                  name.span(),
                  "the statement `" + name.value() + "` has neither `source` nor `because`")
              .help("say where it is published, or add a line `because: ...`"));
    }
  }
}
