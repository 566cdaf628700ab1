package org.tidemark.load;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlText;

/**
 * Checks values that say how far a reading may be off: each of one finding, each finding by one
 * value, in whole steps of its measure.
 */
final class HowFarOff {
  private final Known known;
  private final Problems problems;
  private final Map<String, Span> said = new HashMap<>();

  HowFarOff(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  /**
   * Reads of which finding a value says so, if it does; what a value of that name in a layer below
   * is about need not be repeated.
   *
   * @param fields the value
   * @param name the value's name
   * @param content what it is
   * @param unit its unit
   */
  Optional<Located<String>> of(
      Fields fields, YamlText name, PolicyValue.Content content, String unit) {
    Optional<String> below = known.value(name.text()).flatMap(PolicyValue::howFarOff);
    Optional<Located<String>> of =
        fields.optionalText("how-far-off").or(() -> below.map(f -> Located.of(f, name.span())));
    if (of.isPresent()) {
      Optional<Located<String>> is =
          fields.has("is") ? fields.optionalText("is") : Optional.empty();
      check(name.text(), of.get(), is, content, unit);
      fields
          .optionalText("stricter")
          .filter(s -> s.value().equals(PolicyValue.Stricter.LOWER.word()))
          .ifPresent(
              s ->
                  refuse(
                      DiagnosticCode.UNKNOWN_WORD,
                      s.span(),
                      "the further a reading may be off, the stricter is the policy",
                      "leave this out; only higher is stricter here"));
    }
    return of;
  }

  private void check(
      String name,
      Located<String> of,
      Optional<Located<String>> is,
      PolicyValue.Content content,
      String unit) {
    Optional<Domain.Measure> measure =
        known.vocabulary().finding(of.value()).flatMap(HowFarOff::measure);
    if (measure.isPresent()) {
      one(name, of);
      number(of, is, content, measure.get(), unit);
    } else {
      List<String> measures =
          known.vocabulary().findings().stream()
              .filter(f -> measure(f).isPresent())
              .map(Finding::name)
              .toList();
      refuse(
          DiagnosticCode.UNKNOWN_FINDING,
          of.span(),
          "no measure is called `" + of.value() + "`",
          Fields.suggest(of.value(), measures));
    }
  }

  private static Optional<Domain.Measure> measure(Finding finding) {
    return finding.domain() instanceof Domain.Measure measure
        ? Optional.of(measure)
        : Optional.empty();
  }

  /** Two numbers for one finding, of which one does nothing, are one too many. */
  private void one(String name, Located<String> of) {
    Span before = said.putIfAbsent(of.value(), of.span());
    if (before != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  of.span(),
                  "how far `" + of.value() + "` may be off is said twice")
              .and(before, "it is said here")
              .help("keep one of the two"));
    }
    known
        .howFarOff(of.value())
        .filter(below -> !below.name().equals(name))
        .ifPresent(
            below ->
                alreadyDefined(
                    of,
                    below,
                    "how far `" + of.value() + "` may be off is said by a layer below",
                    "give `" + below.name() + "` a larger number, and leave this one out"));
    known
        .value(name)
        .filter(below -> !below.howFarOff().equals(Optional.of(of.value())))
        .ifPresent(
            below ->
                alreadyDefined(
                    of,
                    below,
                    "`" + name + "` is about something else in a layer below",
                    "give this one another name"));
  }

  private void alreadyDefined(Located<String> of, PolicyValue below, String message, String help) {
    problems.add(
        Diagnostic.error(DiagnosticCode.ALREADY_DEFINED, of.span(), message)
            .and(below.place().span(), "it is defined here")
            .help(help));
  }

  private void number(
      Located<String> of,
      Optional<Located<String>> is,
      PolicyValue.Content content,
      Domain.Measure measure,
      String unit) {
    Span at = is.map(Located::span).orElse(of.span());
    if (!measure.unit().equals(unit)) {
      refuse(
          DiagnosticCode.WRONG_UNIT,
          of.span(),
          "`" + of.value() + "` is read in " + measure.unit() + ", and this is in another unit",
          "write `unit: " + measure.unit() + "`");
    } else if (content instanceof PolicyValue.Single single) {
      fits(single.number(), at, of.value(), measure);
    } else if (!(content instanceof PolicyValue.NotStated)) {
      refuse(
          DiagnosticCode.WRONG_SHAPE,
          at,
          "how far a reading may be off is one number",
          "write one number under `is`: so much to either side");
    }
  }

  private void fits(BigDecimal number, Span at, String finding, Domain.Measure measure) {
    BigDecimal range = measure.highest().subtract(measure.lowest());
    if (number.signum() <= 0 || number.compareTo(range) >= 0) {
      refuse(
          DiagnosticCode.OUT_OF_RANGE,
          at,
          "a reading of `" + finding + "` cannot be off by " + number.toPlainString(),
          "write a number above 0 and below " + range.toPlainString());
    } else if (!measure.onStep(number)) {
      refuse(
          DiagnosticCode.OFF_STEP,
          at,
          "`" + finding + "` is read in steps of " + measure.step().toPlainString(),
          "write a whole number of steps; round up, since less would say that it is off by less");
    }
  }

  private void refuse(DiagnosticCode code, Span at, String message, String help) {
    problems.add(Diagnostic.error(code, at, message).help(help));
  }
}
