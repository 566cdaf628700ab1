package org.tidemark.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Condition;
import org.tidemark.model.Contact;
import org.tidemark.model.Fallback;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Outcome;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.model.Scope;
import org.tidemark.model.Statement;
import org.tidemark.model.Step;

/**
 * All that a policy says, each item by its kind and name as one text, so that two editions can be
 * laid side by side. Where an item is written in its file does not count.
 */
final class Written {
  private final EffectivePolicy policy;
  private final GivenWords given;
  private final Map<String, String> items = new LinkedHashMap<>();

  private Written(EffectivePolicy policy) {
    this.policy = policy;
    this.given = new GivenWords(policy);
  }

  /** What is said, by what it is said of. */
  static Map<String, String> by(EffectivePolicy policy) {
    Written written = new Written(policy);
    written.scope();
    written.numbers();
    policy.questions().forEach(written::question);
    written.care();
    policy.statements().forEach(written::statement);
    policy.departed().forEach(written::departed);
    written.put("Left open", String.join("; ", policy.notStated()));
    return written.items;
  }

  private void put(String what, String says) {
    items.merge(what, says, (one, other) -> one + " " + other);
  }

  private void scope() {
    Scope scope = policy.header().scope();
    put("For whom", new ForWhom(policy.vocabulary()).words(scope));
    scope
        .excludes()
        .forEach(
            x ->
                put(
                    "Not for " + given.of(x.what()),
                    x.see().map(see -> "See " + see + ".").orElse("No other policy is named.")));
    put("Review by", policy.header().reviewBy().map(CardDate::words).orElse("not stated"));
  }

  private void numbers() {
    policy.values().forEach(v -> put(said("Number", v.name()), number(v)));
    policy.bands().forEach(b -> put(said("Band", b.name()), band(b)));
    policy.barred().forEach(b -> put(said("Does not count", b.finding()), b.because()));
    policy
        .terms()
        .forEach(
            t ->
                put(
                    said("Term", t.name()),
                    t.alternatives().stream().map(given::of).collect(Collectors.joining(", or "))));
  }

  private String number(PolicyValue value) {
    return policy.print(value)
        + value
            .howFarOff()
            .map(finding -> ", by which a reading of " + finding + " may be off to either side")
            .orElse("");
  }

  private String band(NamedBand band) {
    String where = given.inBand(new Condition.InBand(band.of(), band.band()));
    return where + band.notStated().map(why -> ". Not stated: " + why).orElse("");
  }

  private void question(EffectiveQuestion question) {
    String words =
        Stream.of(Outcome.values())
            .map(o -> o.word() + ": " + question.word(o))
            .collect(Collectors.joining("; "));
    put(said("Question", question.name()), question.asks() + " " + words + ".");
    question.own().forEach(r -> put(said("Rule of " + question.name(), r.name()), rule(r)));
  }

  private String rule(Rule rule) {
    StringBuilder text = new StringBuilder(rule.effect().word());
    if (!rule.which().isEmpty()) {
      text.append(' ').append(String.join(", ", rule.which()));
    }
    text.append(". Given ").append(given.of(rule.given())).append('.');
    rule.says().because().ifPresent(b -> text.append(" Because: ").append(policy.fill(b)));
    rule.says().doesNotRuleOut().ifPresent(d -> text.append(" Does not rule out: ").append(d));
    rule.says().next().forEach(n -> text.append(' ').append(policy.fill(n)));
    rule.tube().ifPresent(t -> text.append(" Tube: ").append(t.word()).append('.'));
    rule.running().ifPresent(r -> text.append(" What runs: ").append(r.word()).append('.'));
    rule.contact().ifPresent(c -> text.append(" Call: ").append(c).append('.'));
    return text.toString();
  }

  private void departed(Departed one) {
    String kind = "Departs in the " + one.departure().kind().word();
    put(said(kind, one.departure().name()), one.sentence() + " Why: " + one.departure().why());
  }

  private void statement(Statement statement) {
    StatementWords words = new StatementWords(policy);
    put(
        said("Statement", statement.name()),
        policy.fill(statement.says()) + " " + words.whole(statement));
  }

  private void care() {
    policy
        .care()
        .lapses()
        .forEach(l -> put(said("A check lapses", l.name()), policy.fill(l.says())));
    policy.care().fallbacks().forEach(this::steps);
    policy.care().contacts().forEach(c -> put(said("Contact", c.name()), contact(c)));
    policy
        .care()
        .trays()
        .forEach(
            t -> put(said("Tray", t.name()), filled(t.items()) + " Never: " + filled(t.never())));
    policy.care().records().forEach(r -> put(said("Write down", r.name()), filled(r.fields())));
  }

  private void steps(Fallback steps) {
    String name = said("Steps", steps.name());
    put(name, "After " + given.of(steps.after()) + ".");
    steps.steps().forEach(s -> put(name, step(s)));
    steps.barredSteps().forEach(b -> put(name, policy.fill(b.says())));
    put(name, filled(steps.then()));
    steps.contact().ifPresent(c -> put(name, "Call: " + c + "."));
  }

  private String step(Step step) {
    return policy.fill(
        step.alternatives().stream()
            .map(Step.Alternative::says)
            .collect(Collectors.joining(" Or: ")));
  }

  private static String contact(Contact contact) {
    Optional<String> otherwise = contact.otherwise().map(o -> " Otherwise: " + o + ".");
    return contact.who() + ". When: " + contact.when() + "." + otherwise.orElse("");
  }

  private String filled(List<String> texts) {
    return texts.stream().map(policy::fill).collect(Collectors.joining("; "));
  }

  static String said(String kind, String name) {
    return kind + ": " + name.replace('-', ' ');
  }
}
