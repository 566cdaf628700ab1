package org.tidemark.load;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Axis;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;
import org.tidemark.model.Running;
import org.tidemark.model.TubeOrder;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/** Reads one rule. */
final class RuleReader {
  private final String layer;
  private final Known known;
  private final Wording wording;
  private final Backings backings;
  private final Names names;
  private final Problems problems;

  RuleReader(
      String layer,
      Known known,
      Wording wording,
      Backings backings,
      Names names,
      Problems problems) {
    this.layer = layer;
    this.known = known;
    this.wording = wording;
    this.backings = backings;
    this.names = names;
    this.problems = problems;
  }

  /**
   * A rule whose references to other rules and contacts are still to be looked up, since those may
   * stand further down.
   *
   * @param rule the rule
   * @param which the rules that it sets aside
   * @param contact whom it calls
   * @param winsOver the rules whose orders it overrules
   * @param name its name and place
   */
  record Unchecked(
      Rule rule,
      List<Located<String>> which,
      List<Located<String>> contact,
      List<Located<String>> winsOver,
      Located<String> name) {}

  Unchecked read(YamlNode node) {
    Fields fields = Fields.of(node, "a rule", problems);
    Located<String> name = fields.text("rule");
    names.give(name.value(), name.span());
    Effect effect = fields.requiredWord("effect", Effect.class).orElse(Effect.HOLD);
    Axis about = fields.requiredWord("about", Axis.class).orElse(Axis.POSITION);
    Condition given =
        fields
            .required("given")
            .<Condition>map(n -> new ConditionReader(known, problems).given(n))
            .orElseGet(() -> new Condition.AllOf(List.of()));
    List<Located<String>> which = fields.texts("which");
    List<Located<String>> winsOver = fields.texts("wins-over");
    List<Located<String>> contact =
        fields.optionalText("contact").filter(c -> !c.value().equals("not-stated")).stream()
            .toList();
    Rule.Says says =
        new Rule.Says(
            wording.optional(fields, "because"),
            wording.optional(fields, "does-not-rule-out"),
            next(fields));
    Rule rule =
        new Rule(
            name.value(),
            layer,
            effect,
            about,
            given,
            values(which),
            says,
            fields.word("tube", TubeOrder.class),
            fields.word("running", Running.class),
            contact.stream().findFirst().map(Located::value),
            values(winsOver),
            backings.read(fields),
            Place.at(name.span()));
    fields.done();
    return new Unchecked(rule, which, contact, winsOver, name);
  }

  /** Each step, with who does it where the rule says so: people read it in every place alike. */
  private List<String> next(Fields fields) {
    List<String> steps = wording.list(fields, "next");
    Optional<Located<String>> who = fields.optionalText("done-by");
    if (who.isEmpty()) {
      return steps;
    }
    if (steps.isEmpty()) {
      problems.add(nothingToDo(who.get()));
    }
    String role = wording.checked(who.get());
    return steps.stream().map(step -> role + ": " + step).toList();
  }

  private static Diagnostic nothingToDo(Located<String> who) {
    return Diagnostic.error(
            DiagnosticCode.MISSING_KEY,
            who.span(),
            "`done-by` says who does what stands under `next`, and there is no `next`")
        .help("add a line `next: ...`, one action in one sentence");
  }

  private static Set<String> values(List<Located<String>> texts) {
    Set<String> all = new LinkedHashSet<>();
    texts.forEach(t -> all.add(t.value()));
    return all;
  }

  void checkNames(String question, Unchecked unchecked) {
    Map<String, Effect> rules = known.rulesOf(question);
    boolean setAside = unchecked.rule().effect() == Effect.SET_ASIDE;
    if (setAside == unchecked.which().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.SET_ASIDE_NOTHING,
                  unchecked.name().span(),
                  setAside
                      ? "a set-aside rule names the allow rules that it sets aside"
                      : "only a set-aside rule has `which`")
              .help(
                  setAside
                      ? "write which: [name-of-an-allow-rule]"
                      : "delete `which`, or write effect: set-aside"));
    }
    unchecked.which().stream()
        .filter(w -> rules.get(w.value()) != Effect.ALLOW)
        .forEach(w -> notAnAllowRule(w, rules, question));
    unchecked.contact().stream()
        .filter(c -> !known.contacts().contains(c.value()))
        .forEach(this::unknownContact);
    unchecked.winsOver().stream()
        .filter(w -> !rules.containsKey(w.value()))
        .forEach(w -> unknownRule(w, rules, question));
  }

  private void unknownRule(Located<String> name, Map<String, Effect> rules, String question) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_RULE,
                name.span(),
                "no rule of the question `" + question + "` is called `" + name.value() + "`")
            .help(Fields.suggest(name.value(), rules.keySet().stream().sorted().toList())));
  }

  private void notAnAllowRule(Located<String> name, Map<String, Effect> rules, String question) {
    List<String> allow =
        rules.entrySet().stream()
            .filter(e -> e.getValue() == Effect.ALLOW)
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.SET_ASIDE_NOTHING,
                name.span(),
                "`" + name.value() + "` is not an allow rule of the question `" + question + "`")
            .help(Fields.suggest(name.value(), allow)));
  }

  private void unknownContact(Located<String> contact) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_CONTACT,
                contact.span(),
                "no contact is called `" + contact.value() + "`")
            .help(Fields.suggest(contact.value(), known.contacts())));
  }
}
