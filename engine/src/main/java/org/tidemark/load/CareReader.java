package org.tidemark.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Care;
import org.tidemark.model.Condition;
import org.tidemark.model.Contact;
import org.tidemark.model.Fallback;
import org.tidemark.model.RecordList;
import org.tidemark.model.Step;
import org.tidemark.model.Tray;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Reads what a policy says beside its rules: contacts, lapses, fallback steps, trays, records. */
final class CareReader {
  private final String layer;
  private final Known known;
  private final Wording wording;
  private final Backings backings;
  private final Problems problems;

  CareReader(String layer, Known known, Wording wording, Backings backings, Problems problems) {
    this.layer = layer;
    this.known = known;
    this.wording = wording;
    this.backings = backings;
    this.problems = problems;
  }

  Care read(Fields policy) {
    List<Contact> contacts = contacts(policy);
    Names trays = new Names("tray", problems);
    Names records = new Names("record", problems);
    List<Fallback> fallbacks = new ArrayList<>();
    fallback(policy, "fallback").ifPresent(fallbacks::add);
    fallback(policy, "retest").ifPresent(fallbacks::add);
    return new Care(
        new LapsesReader(layer, known, wording, backings, problems).read(policy),
        fallbacks,
        contacts,
        policy.list("trays", node -> tray(node, trays)),
        policy.named("records", e -> record(e, records, asked(policy))),
        calls(policy));
  }

  /**
   * A floor names no contacts; the hospital on it says whom to call for each of the floor's rules.
   */
  private Map<String, String> calls(Fields policy) {
    Map<String, String> calls = new LinkedHashMap<>();
    for (Calls call : policy.named("calls", this::call)) {
      calls.put(call.rule(), call.contact());
    }
    return calls;
  }

  private record Calls(String rule, String contact) {}

  private Calls call(YamlMap.Entry entry) {
    String rule = entry.key().text();
    String contact = entry.value() instanceof YamlText text ? text.text() : "";
    if (!known.isRule(rule)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_RULE,
                  entry.key().span(),
                  "no rule of a layer below is called `" + rule + "`")
              .help(Fields.suggest(rule, known.ruleNames())));
    }
    if (!known.contacts().contains(contact)) {
      unknownContact(Place.at(entry.value().span()), contact);
    }
    return new Calls(rule, contact);
  }

  private List<Contact> contacts(Fields policy) {
    Names names = new Names("contact", problems);
    List<Located<String>> otherwise = new ArrayList<>();
    List<Contact> contacts = policy.named("contacts", e -> contact(e, names, otherwise));
    contacts.forEach(c -> known.learnContact(c.name()));
    otherwise.stream()
        .filter(o -> !known.contacts().contains(o.value()))
        .forEach(o -> unknownContact(o.place(), o.value()));
    return contacts;
  }

  private void unknownContact(Place at, String name) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_CONTACT, at.span(), "no contact is called `" + name + "`")
            .help(Fields.suggest(name, known.contacts())));
  }

  private Contact contact(YamlMap.Entry entry, Names names, List<Located<String>> otherwise) {
    names.give(entry.key().text(), entry.key().span());
    Fields fields = Fields.of(entry.value(), "the contact `" + entry.key().text() + "`", problems);
    Optional<Located<String>> next = fields.optionalText("else");
    next.ifPresent(otherwise::add);
    Contact contact = new ContactReader(problems).read(entry, fields, next.map(Located::value));
    fields.done();
    return contact;
  }

  private Optional<Fallback> fallback(Fields policy, String key) {
    Optional<YamlNode> node = policy.optional(key);
    if (node.isEmpty()
        || (node.get() instanceof YamlText text && text.text().equals("not-stated"))) {
      return Optional.empty();
    }
    Fields fields = Fields.of(node.get(), "`" + key + "`", problems);
    Condition after =
        fields
            .required("after")
            .<Condition>map(n -> new ConditionReader(known, problems).given(n))
            .orElseGet(() -> new Condition.AllOf(List.of()));
    boolean inOrder = fields.optionalText("in-order").map(t -> inOrder(t, fields)).orElse(false);
    Taken taken = new Taken(problems);
    List<Step> steps = fields.list("steps", n -> step(n, taken));
    List<Fallback.BarredStep> barred = fields.list("barred-steps", n -> barredStep(n, taken));
    Optional<Located<String>> contact =
        fields.optionalText("contact").filter(c -> !c.value().equals("not-stated"));
    contact
        .filter(c -> !known.contacts().contains(c.value()))
        .ifPresent(c -> unknownContact(c.place(), c.value()));
    Fallback fallback =
        new Fallback(
            key,
            layer,
            after,
            inOrder,
            steps,
            barred,
            wording.list(fields, "then"),
            contact.map(Located::value),
            backings.read(fields),
            Place.at(policy.key(key)));
    fields.done();
    return Optional.of(fallback);
  }

  private boolean inOrder(Located<String> text, Fields fields) {
    if (!List.of("yes", "no", "not-stated").contains(text.value())) {
      fields.unknownWord(text, List.of("yes", "no", "not-stated"), "`in-order`");
    }
    return text.value().equals("yes");
  }

  private Step step(YamlNode node, Taken taken) {
    Fields fields = Fields.of(node, "a step", problems);
    List<Step.Alternative> alternatives =
        fields.has("either")
            ? fields.list("either", n -> alternative(n, taken))
            : List.of(stepItself(fields, taken));
    Step step = new Step(alternatives, backings.read(fields));
    fields.done();
    return step;
  }

  private Step.Alternative alternative(YamlNode node, Taken taken) {
    Fields fields = Fields.of(node, "a step", CareParts.STEP_ALTERNATIVE, problems);
    Step.Alternative alternative = stepItself(fields, taken);
    fields.done();
    return alternative;
  }

  /** A step says what to do, unless a layer below has said it already. */
  private Step.Alternative stepItself(Fields fields, Taken taken) {
    Located<String> name = fields.text("step");
    taken.step(name);
    Optional<String> says = wording.optional(fields, "do").or(() -> known.stepSays(name.value()));
    if (says.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.NO_ACTION,
                  name.span(),
                  "the step `" + name.value() + "` does not say what to do")
              .help("add a line `do: ...`, one action in one sentence"));
    }
    return new Step.Alternative(name.value(), says.orElse(""));
  }

  private Fallback.BarredStep barredStep(YamlNode node, Taken taken) {
    Fields fields = Fields.of(node, "a barred step", problems);
    Located<String> name = fields.text("step");
    Fallback.BarredStep step =
        new Fallback.BarredStep(
            name.value(), wording.required(fields, "never"), backings.read(fields));
    fields.done();
    taken.barred(name);
    return step;
  }

  private Tray tray(YamlNode node, Names names) {
    Fields fields = Fields.of(node, "a tray", problems);
    Located<String> name = fields.text("tray");
    names.give(name.value(), name.span());
    Tray tray =
        new Tray(
            name.value(),
            fields.text("title").value(),
            wording.list(fields, "items"),
            wording.list(fields, "never"),
            new ScopeReader(known.vocabulary(), problems).tests(fields),
            layer,
            backings.read(fields),
            Place.at(name.span()));
    if (tray.items().isEmpty() && node instanceof YamlMap) {
      fields.required("items");
    }
    fields.done();
    return tray;
  }

  private List<String> asked(Fields policy) {
    List<String> asked = new ArrayList<>(known.questions());
    for (YamlMap.Entry part : policy.seen()) {
      if (part.key().text().equals("questions") && part.value() instanceof YamlMap questions) {
        questions.entries().forEach(q -> asked.add(q.key().text()));
      }
    }
    return asked;
  }

  private void unknownQuestion(Located<String> question, List<String> asked) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_QUESTION,
                question.span(),
                "no question is called `" + question.value() + "`")
            .help(Fields.suggest(question.value(), asked)));
  }

  private RecordList record(YamlMap.Entry entry, Names names, List<String> asked) {
    names.give(entry.key().text(), entry.key().span());
    boolean list = entry.value() instanceof YamlList;
    Fields fields =
        Fields.of(
            entry.value(),
            "the record `" + entry.key().text() + "`" + (list ? " (fields: [...])" : ""),
            problems);
    List<Located<String>> whenAsked = fields.texts("when-asked");
    whenAsked.stream()
        .filter(q -> !asked.contains(q.value()))
        .forEach(q -> unknownQuestion(q, asked));
    RecordList record =
        new RecordList(
            entry.key().text(),
            wording.list(fields, "fields"),
            whenAsked.stream().map(Located::value).toList(),
            backings.read(fields),
            Place.at(entry.key().span()));
    fields.done();
    return record;
  }
}
