package org.tidemark.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Band;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.Option;
import org.tidemark.model.Value;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/**
 * Reads the condition of a rule: a map of findings means all of them, {@code any-of} holds
 * alternatives, each a map again, and {@code some-of} says how many of its parts must hold.
 */
final class ConditionReader {
  private static final String ANY_OF = "any-of";
  private static final String SOME_OF = "some-of";

  private final Known known;
  private final Problems problems;
  private final Bounds bounds;

  ConditionReader(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
    this.bounds = new Bounds(known, problems);
  }

  Condition given(YamlNode node) {
    List<Condition> parts = new ArrayList<>();
    notEmpty(node);
    for (YamlMap.Entry entry : Fields.of(node, "`given`", problems).entries()) {
      if (entry.key().text().equals(ANY_OF)) {
        parts.add(anyOf(entry));
      } else if (entry.key().text().equals(SOME_OF)) {
        someOf(entry.value()).ifPresent(parts::add);
      } else {
        part(entry).ifPresent(parts::add);
      }
    }
    return new Condition.AllOf(parts);
  }

  /** A condition without a part would hold for everybody. */
  private void notEmpty(YamlNode node) {
    if (node instanceof YamlMap map && map.entries().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.EMPTY_VALUE, node.span(), "a condition with nothing in it")
              .help("write the findings that it needs, such as {breathing: new}"));
    }
  }

  private Condition anyOf(YamlMap.Entry entry) {
    return new Condition.AnyOf(alternatives(entry.value(), "`any-of`"));
  }

  /** So many of a list of parts, whichever. */
  Optional<Condition> someOf(YamlNode node) {
    return new SomeOfReader(this, problems).read(node);
  }

  /** The alternatives of an any-of or a term: a list of maps without a further any-of. */
  List<Condition> alternatives(YamlNode node, String what) {
    if (!(node instanceof YamlList list) || list.items().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  node.span(),
                  what
                      + " needs a list of alternatives, and this is "
                      + (node instanceof YamlList ? "an empty list" : node.kind()))
              .help(
                  "write each alternative in braces, such as [{breathing: new}, {oxygen: falling}]"));
      return List.of();
    }
    return list.items().stream().map(this::alternative).toList();
  }

  private Condition alternative(YamlNode node) {
    List<Condition> parts = new ArrayList<>();
    notEmpty(node);
    for (YamlMap.Entry entry : Fields.of(node, "an alternative", problems).entries()) {
      if (List.of(ANY_OF, SOME_OF).contains(entry.key().text())) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.WRONG_SHAPE,
                    entry.key().span(),
                    "alternatives within alternatives")
                .help("give the inner ones a name under `terms`"));
      } else {
        part(entry).ifPresent(parts::add);
      }
    }
    return new Condition.AllOf(parts);
  }

  /** One finding or term and what it should be. */
  Optional<Condition> part(YamlMap.Entry entry) {
    String name = entry.key().text();
    Optional<Finding> finding = known.vocabulary().finding(name);
    if (finding.isPresent()) {
      return test(finding.get(), entry.value());
    }
    if (known.isTerm(name)) {
      return term(name, entry.value());
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_FINDING,
                entry.key().span(),
                "no finding or term is called `" + name + "`")
            .help(Fields.suggest(name, known.findingsAndTerms())));
    return Optional.empty();
  }

  private Optional<Condition> term(String name, YamlNode node) {
    if (node instanceof YamlText text && List.of("yes", "no").contains(text.text())) {
      return Optional.of(new Condition.TermIs(name, text.text().equals("yes")));
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD, node.span(), "the term `" + name + "` is yes or no")
            .help("write " + name + ": \"yes\" or " + name + ": \"no\""));
    return Optional.empty();
  }

  private Optional<Condition> test(Finding finding, YamlNode node) {
    if (node instanceof YamlMap map) {
      return comparison(finding, map);
    }
    if (node instanceof YamlList list) {
      if (list.items().isEmpty()) {
        problems.add(Fields.emptyList(list, "`" + finding.name() + "`"));
      }
      return options(finding, list.items());
    }
    YamlText text = (YamlText) node;
    boolean measure = finding.domain() instanceof Domain.Measure;
    boolean word = finding.domain().option(text.text()).isPresent();
    return measure && !word ? bandOrNumber(finding, text) : options(finding, List.of(node));
  }

  private Optional<Condition> bandOrNumber(Finding finding, YamlText text) {
    String typed = text.text();
    if (known.bandOf(typed, finding.name())) {
      return Optional.of(new Condition.InNamedBand(finding.name(), typed));
    }
    Located<String> located = Located.of(typed, text.span());
    if (Scalars.looksLikeNumber(typed) || isSignedLimit(typed)) {
      Domain.Measure measure = (Domain.Measure) finding.domain();
      return Measures.reading(located, finding, measure, problems)
          .map(n -> new Condition.InBand(finding.name(), Band.exactly(new Limit.Fixed(n))));
    }
    List<String> may = new ArrayList<>(known.bandsOf(finding.name()));
    finding.domain().options().forEach(o -> may.add(o.name()));
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_BAND,
                text.span(),
                "no band of `" + finding.name() + "` is called `" + typed + "`")
            .help(
                may.isEmpty()
                    ? "write a limit in words, such as {at-most: 5.5}"
                    : Fields.suggest(typed, may)));
    return Optional.empty();
  }

  /** A number with signs or words round it, which is helped as a number and not as a name. */
  private static boolean isSignedLimit(String typed) {
    return typed.chars().anyMatch(Character::isDigit)
        && typed.chars().anyMatch(c -> !Character.isLetterOrDigit(c) && c != '-' && c != '_');
  }

  private Optional<Condition> options(Finding finding, List<YamlNode> nodes) {
    Set<String> names = new LinkedHashSet<>();
    boolean sound = true;
    for (YamlNode node : nodes) {
      Optional<String> option = option(finding, node);
      sound &= option.isPresent();
      option.ifPresent(names::add);
    }
    return sound && !names.isEmpty()
        ? Optional.of(new Condition.Options(finding.name(), names))
        : Optional.empty();
  }

  private Optional<String> option(Finding finding, YamlNode node) {
    List<String> may = finding.domain().options().stream().map(Option::name).toList();
    if (node instanceof YamlText text && may.contains(text.text())) {
      return Optional.of(text.text());
    }
    String typed = node instanceof YamlText text ? "`" + text.text() + "`" : node.kind();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_OPTION,
                node.span(),
                "`" + finding.name() + "` cannot be " + typed)
            .help(Fields.suggest(node instanceof YamlText text ? text.text() : "", may)));
    return Optional.empty();
  }

  private Optional<Condition> comparison(Finding finding, YamlMap map) {
    Fields fields = new Fields(map, "the condition on `" + finding.name() + "`", problems);
    Optional<Condition> result =
        fields.has("other-than") ? otherThan(finding, fields) : inBand(finding, fields);
    fields.done();
    return result;
  }

  private Optional<Condition> inBand(Finding finding, Fields fields) {
    if (finding.domain() instanceof Domain.Measure measure) {
      return Optional.of(
          new Condition.InBand(finding.name(), bounds.read(fields, finding, measure)));
    }
    Set<String> limits = new HashSet<>(Bounds.KEYS);
    limits.forEach(fields::has);
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                fields.span(),
                "`" + finding.name() + "` is a choice and has no limits")
            .help("list the options that are meant, such as [one, two]"));
    return Optional.empty();
  }

  private Optional<Condition> otherThan(Finding finding, Fields fields) {
    Located<String> text = fields.text("other-than");
    if (finding.domain() instanceof Domain.Measure measure) {
      return Measures.reading(text, finding, measure, problems)
          .map(n -> new Condition.OtherThan(finding.name(), new Value.Amount(n)));
    }
    Span at = text.span();
    return option(finding, new YamlText(text.value(), YamlText.Style.PLAIN, at))
        .map(o -> new Condition.OtherThan(finding.name(), Value.word(o)));
  }
}
