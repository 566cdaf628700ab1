package org.tidemark.load;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.PlanBounds;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads the numbers of a policy, each written once with its unit, its reason and its source. */
final class ValuesReader {
  private final Known known;
  private final Backings backings;
  private final Problems problems;
  private final Names names;
  private final HowFarOff howFarOff;

  ValuesReader(Known known, Backings backings, Problems problems) {
    this.known = known;
    this.backings = backings;
    this.problems = problems;
    this.names = new Names("value", problems);
    this.howFarOff = new HowFarOff(known, problems);
  }

  List<PolicyValue> read(Fields policy) {
    List<PolicyValue> values = policy.named("values", this::value);
    values.forEach(known::learn);
    return values;
  }

  private PolicyValue value(YamlMap.Entry entry) {
    String name = entry.key().text();
    names.give(name, entry.key().span());
    Fields fields = Fields.of(entry.value(), "the value `" + name + "`", problems);
    PolicyValue.Content content = content(fields, name);
    boolean window = fields.has("from") || fields.has("until");
    String unit = window ? "" : unit(fields);
    Optional<String> why = fields.optionalText("why").map(Located::value);
    Optional<PolicyValue.Stricter> stricter = fields.word("stricter", PolicyValue.Stricter.class);
    fields.optionalText("was").ifPresent(was -> number(was, fields));
    Optional<PlanBounds> bounds =
        fields.optional("plan-may-set").map(node -> bounds(node, name, unit));
    Optional<Located<String>> off = howFarOff.of(fields, entry.key(), content, unit);
    Rule.Backing backing = backings.read(fields);
    fields.done();
    return new PolicyValue(
        name,
        content,
        unit,
        why,
        backing.standing(),
        backing.sources(),
        off.isEmpty() ? stricter : Optional.of(PolicyValue.Stricter.HIGHER),
        bounds,
        off.map(Located::value),
        Place.at(entry.key().span().to(entry.value().span())));
  }

  /** One way to write each unit, so that a number in a text is found again here. */
  private String unit(Fields fields) {
    Located<String> unit = fields.text("unit");
    String meant = Units.meant(unit.value());
    if (!meant.equals(unit.value())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_WORD,
                  unit.span(),
                  "`unit` cannot be " + Typed.shown(unit.value()))
              .help("write " + meant));
    }
    return meant;
  }

  private PlanBounds bounds(YamlNode node, String name, String unit) {
    Fields fields = Fields.of(node, "`plan-may-set` of `" + name + "`", problems);
    Optional<BigDecimal> low =
        fields.optionalText("at-least").flatMap(t -> Scalars.number(t, unit, problems));
    Optional<BigDecimal> high =
        fields.optionalText("at-most").flatMap(t -> Scalars.number(t, unit, problems));
    if (!fields.has("at-least") && !fields.has("at-most")) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.MISSING_KEY, fields.span(), "a plan may not set just any number")
              .help("write at-least, at-most, or both"));
    }
    PlanBounds bounds = new PlanBounds(low, high, fields.text("by").value());
    fields.done();
    return bounds;
  }

  private PolicyValue.Content content(Fields fields, String name) {
    if (fields.has("from") || fields.has("until")) {
      return window(fields);
    }
    if (fields.has("at-least") || fields.has("at-most")) {
      return range(fields);
    }
    Optional<Located<String>> given = fields.requiredText("is");
    if (given.isEmpty()) {
      return new PolicyValue.NotStated();
    }
    Located<String> is = given.get();
    if (is.value().equals("not-stated")) {
      problems.add(
          Diagnostic.notice(
              DiagnosticCode.VALUE_NOT_STATED,
              is.span(),
              "`" + name + "` is not stated; a rule that needs it cannot fire"));
      return new PolicyValue.NotStated();
    }
    return number(is, fields)
        .<PolicyValue.Content>map(PolicyValue.Single::new)
        .orElseGet(PolicyValue.NotStated::new);
  }

  private Optional<BigDecimal> number(Located<String> text, Fields fields) {
    String unit = fields.optionalText("unit").map(Located::value).orElse("");
    Optional<BigDecimal> number = Scalars.number(text, unit, problems);
    number.filter(n -> n.signum() < 0).ifPresent(n -> lessThanNothing(text, n));
    return number;
  }

  private void lessThanNothing(Located<String> text, BigDecimal number) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.OUT_OF_RANGE,
                text.span(),
                "`" + text.value() + "` is less than nothing")
            .help("write " + number.negate().toPlainString() + ", if that is meant"));
  }

  private PolicyValue.Content range(Fields fields) {
    Optional<BigDecimal> low = fields.requiredText("at-least").flatMap(t -> number(t, fields));
    Optional<BigDecimal> high = fields.requiredText("at-most").flatMap(t -> number(t, fields));
    if (low.isEmpty() || high.isEmpty()) {
      return new PolicyValue.NotStated();
    }
    if (low.get().compareTo(high.get()) > 0) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.REVERSED, fields.span(), "the lower end lies above the upper end")
              .help("write the lower number in at-least"));
    }
    return new PolicyValue.Range(low.get(), high.get());
  }

  private PolicyValue.Content window(Fields fields) {
    Optional<LocalTime> from = fields.requiredText("from").flatMap(t -> Scalars.time(t, problems));
    Optional<LocalTime> until =
        fields.requiredText("until").flatMap(t -> Scalars.time(t, problems));
    if (from.isEmpty() || until.isEmpty()) {
      return new PolicyValue.NotStated();
    }
    if (from.get().equals(until.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  fields.span(),
                  "the window ends in the minute in which it begins")
              .help("`until` is the first minute that no longer belongs to it"));
    }
    return new PolicyValue.Window(from.get(), until.get());
  }
}
