package org.tidemark.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Option;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlText;

/** Reads the values that something may have: of a finding, or of a field of a list. */
final class DomainReader {
  /** Several times what any instrument at a bedside shows. */
  private static final BigDecimal MOST_READINGS = BigDecimal.valueOf(20_000);

  private static final List<Option> YES_NO =
      List.of(new Option("yes", "Yes"), new Option("no", "No"));

  private final YamlMap.Entry entry;
  private final Fields fields;
  private final Problems problems;

  /**
   * A reader.
   *
   * @param entry the thing and its name
   * @param fields its fields
   * @param problems what is found wrong
   */
  DomainReader(YamlMap.Entry entry, Fields fields, Problems problems) {
    this.entry = entry;
    this.fields = fields;
    this.problems = problems;
  }

  Domain read() {
    Optional<Located<String>> kind = fields.requiredText("kind");
    return kind.map(this::domain).orElseGet(() -> new Domain.Choice(YES_NO));
  }

  private Domain domain(Located<String> kind) {
    return switch (kind.value()) {
      case "yes-no" -> new Domain.Choice(YES_NO);
      case "choice" -> new Domain.Choice(options());
      case "measure" -> measure();
      default -> unknownKind(kind);
    };
  }

  private Domain unknownKind(Located<String> kind) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD,
                kind.span(),
                "`kind` cannot be " + Typed.shown(kind.value()))
            .help("write choice, yes-no or measure"));
    return new Domain.Choice(YES_NO);
  }

  private List<Option> options() {
    Names names = new Names("option", problems);
    List<Option> options =
        fields.named(
            "options",
            e -> {
              names.give(e.key().text(), e.key().span());
              return new Option(
                  e.key().text(), e.value() instanceof YamlText t ? t.text() : wrongLabel(e));
            });
    if (options.size() < 2) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.MISSING_KEY,
                  entry.key().span(),
                  "a choice needs two options or more")
              .help("write options: {name: What the nurse reads, other: Its words}"));
    }
    return options;
  }

  private String wrongLabel(YamlMap.Entry e) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                e.value().span(),
                "the option's words need a text, and this is " + e.value().kind())
            .help("write what the nurse reads, in double quotes"));
    return "";
  }

  private Domain measure() {
    List<Located<String>> range = fields.texts("range");
    if (range.size() != 2) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE, entry.key().span(), "a measure needs its range")
              .help("write range: [lowest, highest]"));
      List.of("unit", "step", "in-place-of-a-number").forEach(fields::has);
      return new Domain.Choice(YES_NO);
    }
    String unit = fields.text("unit").value();
    Optional<BigDecimal> low = Scalars.number(range.get(0), unit, problems);
    Optional<BigDecimal> high = Scalars.number(range.get(1), unit, problems);
    Optional<BigDecimal> step =
        fields.requiredText("step").flatMap(t -> Scalars.number(t, unit, problems));
    List<Option> words = new ArrayList<>();
    fields.named(
        "in-place-of-a-number",
        e ->
            words.add(
                new Option(
                    e.key().text(), e.value() instanceof YamlText t ? t.text() : wrongLabel(e))));
    if (low.isEmpty() || high.isEmpty() || step.isEmpty()) {
      return new Domain.Choice(YES_NO);
    }
    return checked(new Domain.Measure(unit, low.get(), high.get(), step.get(), words));
  }

  private Domain checked(Domain.Measure measure) {
    if (sound(measure) && !tooFine(measure)) {
      return measure;
    }
    return new Domain.Choice(YES_NO);
  }

  private boolean tooFine(Domain.Measure measure) {
    BigDecimal readings =
        measure.highest().subtract(measure.lowest()).divideToIntegralValue(measure.step());
    boolean tooFine = readings.compareTo(MOST_READINGS) >= 0;
    if (tooFine) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TOO_LARGE,
                  entry.key().span(),
                  "this measure tells "
                      + readings.add(BigDecimal.ONE).toBigInteger()
                      + " readings apart, and "
                      + MOST_READINGS.toPlainString()
                      + " are the most")
              .help("write a larger step, or a smaller range"));
    }
    return tooFine;
  }

  private boolean sound(Domain.Measure measure) {
    boolean sound =
        measure.step().signum() > 0
            && measure.lowest().compareTo(measure.highest()) < 0
            && measure.onStep(measure.lowest())
            && measure.onStep(measure.highest());
    if (!sound) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.REVERSED,
                  entry.key().span(),
                  "the range and the step of this measure do not fit")
              .help("the lower end comes first, and both ends are whole numbers of steps"));
    }
    return sound;
  }
}
