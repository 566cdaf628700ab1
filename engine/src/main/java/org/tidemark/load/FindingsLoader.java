package org.tidemark.load;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Contradictions;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Reads findings as they were entered: by file, or one at a time at a terminal. */
public final class FindingsLoader {
  private final Vocabulary vocabulary;
  private final Problems problems;

  FindingsLoader(Vocabulary vocabulary, Problems problems) {
    this.vocabulary = vocabulary;
    this.problems = problems;
  }

  /** Named findings, each with an option, a number, a list of options, or a stretch of numbers. */
  public static Loaded<Findings> load(YamlNode node, Vocabulary vocabulary) {
    Problems problems = new Problems();
    Findings findings = new FindingsLoader(vocabulary, problems).read(node);
    return problems.conclude(() -> findings);
  }

  /** One value of one finding, as typed. */
  static Optional<Value> value(Located<String> text, Finding finding, Problems problems) {
    Optional<Option> option = finding.domain().option(text.value());
    if (option.isPresent()) {
      return Optional.of(Value.word(text.value()));
    }
    if (finding.domain() instanceof Domain.Measure measure
        && !looksLikeWord(text.value(), measure)) {
      return Measures.reading(text, finding, measure, problems).map(Value.Amount::new);
    }
    List<String> may = finding.domain().options().stream().map(Option::name).toList();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_OPTION,
                text.span(),
                "`" + finding.name() + "` cannot be `" + text.value() + "`")
            .help(Fields.suggest(text.value(), may)));
    return Optional.empty();
  }

  /**
   * A misspelt word in place of a number is helped as a word; everything else is helped as a
   * number.
   */
  private static boolean looksLikeWord(String typed, Domain.Measure measure) {
    return !measure.options().isEmpty()
        && typed.chars().allMatch(c -> Character.isLowerCase(c) || c == '-')
        && !typed.isEmpty();
  }

  /** One finding entered as text, for a terminal or a page; the text is its own source. */
  public static Loaded<Seen> entered(Located<String> text, Finding finding) {
    Problems problems = new Problems();
    Optional<Value> value = value(text, finding, problems);
    return problems.conclude(() -> seen(value.orElseThrow()));
  }

  private static Seen seen(Value value) {
    return value instanceof Value.Amount amount
        ? Seen.number(amount.number())
        : Seen.option(((Value.Word) value).name());
  }

  Findings read(YamlNode node) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    for (YamlMap.Entry entry : Fields.of(node, "a file of findings", problems).entries()) {
      finding(entry)
          .flatMap(f -> seen(f, entry.value()))
          .ifPresent(
              seen ->
                  entries.put(
                      entry.key().text(),
                      new Findings.Entry(
                          seen, Place.at(entry.key().span().to(entry.value().span())))));
    }
    Findings findings = new Findings(entries);
    if (!problems.anyError()) {
      Contradictions.report(findings, vocabulary, problems);
    }
    return findings;
  }

  private Optional<Finding> finding(YamlMap.Entry entry) {
    String name = entry.key().text();
    Optional<Finding> finding = vocabulary.finding(name);
    if (finding.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  entry.key().span(),
                  "no finding is called `" + name + "`")
              .help(Fields.suggest(name, vocabulary.names())));
    }
    return finding;
  }

  /** What was entered for one finding. */
  Optional<Seen> seen(Finding finding, YamlNode node) {
    if (node instanceof YamlText text) {
      if (text.text().isBlank() || isNull(text)) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.EMPTY_VALUE,
                    text.span(),
                    "nothing is written for `" + finding.name() + "`")
                .help("write what was found, or delete the line if it is not known"));
        return Optional.empty();
      }
      return value(Located.of(text.text().strip(), text.span()), finding, problems)
          .map(FindingsLoader::seen);
    }
    return node instanceof YamlList list
        ? several(finding, list)
        : stretch(finding, (YamlMap) node);
  }

  /** A program's way to write nothing; a nurse's is to write nothing. */
  private static boolean isNull(YamlText text) {
    return text.style() == YamlText.Style.PLAIN && List.of("null", "~").contains(text.text());
  }

  private Optional<Seen> several(Finding finding, YamlList list) {
    Set<String> options = new LinkedHashSet<>();
    for (YamlNode item : list.items()) {
      Optional<Seen> one = item instanceof YamlText ? seen(finding, item) : Optional.empty();
      if (item instanceof YamlText && one.isEmpty()) {
        return Optional.empty();
      }
      if (one.isEmpty() || one.get().from().isPresent()) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.WRONG_SHAPE,
                    item.span(),
                    "a list holds options that `" + finding.name() + "` may be")
                .help(
                    "a number that is not exactly known is written as {at-least: lower, at-most: higher}"));
        return Optional.empty();
      }
      options.addAll(one.get().options());
    }
    if (options.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.EMPTY_VALUE,
                  list.span(),
                  "the list for `" + finding.name() + "` is empty")
              .help("write what it may be, or delete the line if it is not known"));
      return Optional.empty();
    }
    return Optional.of(Seen.options(options));
  }

  private Optional<Seen> stretch(Finding finding, YamlMap map) {
    Fields fields = Fields.of(map, "`" + finding.name() + "`", OtherFiles.STRETCH, problems);
    if (!(finding.domain() instanceof Domain.Measure measure)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  map.span(),
                  "`" + finding.name() + "` is a choice and has no limits")
              .help("write one option, or a list of those that it may be"));
      return Optional.empty();
    }
    Optional<BigDecimal> from =
        fields
            .requiredText("at-least")
            .flatMap(t -> Measures.reading(t, finding, measure, problems));
    Optional<BigDecimal> to =
        fields
            .requiredText("at-most")
            .flatMap(t -> Measures.reading(t, finding, measure, problems));
    fields.done();
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().compareTo(to.get()) > 0) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.REVERSED, map.span(), "the lower end lies above the upper end")
              .help("write the lower number in at-least"));
      return Optional.empty();
    }
    return Optional.of(Seen.between(from.get(), to.get()));
  }
}
