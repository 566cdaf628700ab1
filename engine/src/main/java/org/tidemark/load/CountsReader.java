package org.tidemark.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.model.Condition;
import org.tidemark.model.Counts;
import org.tidemark.model.Finding;
import org.tidemark.model.ListKind;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads which items of the lists of a tube's record count. */
final class CountsReader {
  private static final String FILMS = "film-readings";
  private static final String READINGS = "ph-readings";
  private static final String LENGTHS = "lengths";
  private static final String TAKEN = "taken";
  private static final List<String> WEIGHED = List.of(READINGS, FILMS, LENGTHS);

  /** What shows in a reading; to leave a reading out for that would pick the good ones. */
  private static final Set<String> RESULTS = Set.of("ph", "aspirate");

  private final String layer;
  private final Vocabulary vocabulary;
  private final List<PolicyValue> values;
  private final List<NamedBand> bands;
  private final Wording wording;
  private final Backings backings;
  private final Problems problems;
  private final Set<String> lists = new LinkedHashSet<>();
  private final List<Counts.Criterion> drops = new ArrayList<>();
  private final List<Counts.Criterion> needs = new ArrayList<>();
  private final List<Counts.Repeat> repeats = new ArrayList<>();
  private final List<Counts.Moved> moved = new ArrayList<>();

  CountsReader(
      String layer,
      Vocabulary vocabulary,
      List<Policy> below,
      List<PolicyValue> values,
      List<NamedBand> bands,
      Wording wording,
      Backings backings,
      Problems problems) {
    this.layer = layer;
    this.vocabulary = vocabulary;
    this.values =
        Stream.concat(below.stream().flatMap(p -> p.values().stream()), values.stream()).toList();
    this.bands =
        Stream.concat(below.stream().flatMap(p -> p.bands().stream()), bands.stream()).toList();
    this.wording = wording;
    this.backings = backings;
    this.problems = problems;
  }

  Counts read(Fields policy) {
    policy.named("counts", this::list);
    return new Counts(lists, drops, needs, repeats, moved);
  }

  private YamlNode list(YamlMap.Entry entry) {
    Optional<ListKind> kind = vocabulary.list(entry.key().text());
    if (kind.isEmpty() || !WEIGHED.contains(kind.get().name())) {
      problems.add(unknownList(entry, kind));
      return entry.value();
    }
    lists.add(kind.get().name());
    Fields fields = Fields.of(entry.value(), "`" + kind.get().name() + "`", problems);
    switch (kind.get().name()) {
      case FILMS ->
          needs.addAll(fields.list("stomach-needs", node -> criterion(node, kind.get(), "all-of")));
      case LENGTHS -> moved.addAll(fields.list("moved", node -> moved(node, kind.get())));
      default -> {
        drops.addAll(fields.list("drop", node -> drop(node, kind.get())));
        repeats.addAll(fields.list("repeats", node -> repeat(node, kind.get())));
      }
    }
    fields.done();
    return entry.value();
  }

  private Counts.Repeat repeat(YamlNode node, ListKind kind) {
    Fields fields = Fields.of(node, "an item of `repeats`", problems);
    Condition tooHigh = condition(fields, "too-high", kind);
    Optional<Located<String>> wait = fields.requiredText("wait");
    wait.ifPresent(this::isWait);
    Counts.Repeat read =
        new Counts.Repeat(
            tooHigh,
            wait.map(Located::value).orElse(""),
            backings.read(fields),
            Place.at(node.span()));
    fields.done();
    return read;
  }

  private void isWait(Located<String> name) {
    values.stream()
        .filter(v -> v.name().equals(name.value()))
        .findFirst()
        .ifPresentOrElse(v -> isWait(v, name), () -> unknown(name));
  }

  private void isWait(PolicyValue value, Located<String> name) {
    if (!value.unit().equals("min") || !(value.number().isPresent() || !value.isStated())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_UNIT,
                  name.span(),
                  "`" + name.value() + "` is not one number of minutes")
              .help("a wait is a value with one number in min"));
    }
  }

  private void unknown(Located<String> value) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_VALUE,
                value.span(),
                "no value is called `" + value.value() + "`")
            .help(Fields.suggest(value.value(), values.stream().map(PolicyValue::name).toList())));
  }

  private Counts.Moved moved(YamlNode node, ListKind kind) {
    Fields fields = Fields.of(node, "an item of `moved`", problems);
    Located<String> against = fields.text("against");
    List<String> may =
        kind.field(TAKEN).stream()
            .flatMap(f -> f.domain().options().stream())
            .map(Option::name)
            .toList();
    if (!may.contains(against.value())) {
      fields.unknownWord(against, may, "`against`");
    }
    Counts.Moved read =
        new Counts.Moved(
            against.value(),
            condition(fields, "when", kind),
            backings.read(fields),
            Place.at(node.span()));
    fields.done();
    return read;
  }

  private Counts.Criterion drop(YamlNode node, ListKind kind) {
    Counts.Criterion read = criterion(node, kind, "when");
    read.fields().stream()
        .filter(RESULTS::contains)
        .findFirst()
        .ifPresent(field -> problems.add(byResult(node, field)));
    return read;
  }

  private static Diagnostic byResult(YamlNode node, String field) {
    return Diagnostic.error(
            DiagnosticCode.LEFT_OUT_BY_RESULT,
            node.span(),
            "a reading would be left out for its `" + field + "`")
        .help("leave a reading out for how it was made, and let a rule judge what it shows");
  }

  private Diagnostic unknownList(YamlMap.Entry entry, Optional<ListKind> kind) {
    String name = entry.key().text();
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_LIST,
            entry.key().span(),
            kind.isEmpty()
                ? "a tube's record has no list `" + name + "`"
                : "no finding is worked out from the list `" + name + "`")
        .help(
            Fields.suggest(
                name, WEIGHED.stream().filter(l -> vocabulary.list(l).isPresent()).toList()));
  }

  private Counts.Criterion criterion(YamlNode node, ListKind kind, String key) {
    Fields fields = Fields.of(node, "an item of `counts`", problems);
    Optional<YamlNode> given = fields.required(key);
    Counts.Criterion read =
        new Counts.Criterion(
            kind.name(),
            layer,
            condition(given, kind),
            given.map(CountsReader::names).orElse(List.of()),
            wording.required(fields, "because"),
            backings.read(fields),
            Place.at(node.span()));
    fields.done();
    return read;
  }

  private Condition condition(Fields fields, String key, ListKind kind) {
    return condition(fields.required(key), kind);
  }

  private Condition condition(Optional<YamlNode> given, ListKind kind) {
    return given
        .<Condition>map(n -> new ConditionReader(fieldsOf(kind), problems).given(n))
        .orElseGet(() -> new Condition.AllOf(List.of()));
  }

  /** The fields of a list as a vocabulary of their own, with the numbers of the policy. */
  private Known fieldsOf(ListKind kind) {
    List<Finding> fields =
        kind.fields().keySet().stream().flatMap(f -> kind.field(f).stream()).toList();
    Known known = new Known(new Vocabulary(kind.name(), 1, fields), List.of());
    values.forEach(known::learn);
    bands.forEach(known::learn);
    return known;
  }

  private static List<String> names(YamlNode node) {
    if (node instanceof YamlMap map) {
      return map.entries().stream()
          .flatMap(e -> Stream.concat(Stream.of(e.key().text()), names(e.value()).stream()))
          .toList();
    }
    return node instanceof YamlList list
        ? list.items().stream().flatMap(i -> names(i).stream()).toList()
        : List.of();
  }
}
