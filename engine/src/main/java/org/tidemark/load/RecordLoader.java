package org.tidemark.load;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.ListKind;
import org.tidemark.model.TubeRecord;
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

/**
 * Reads a tube's record: the moment of the question, and what was written more than once. Whatever
 * an item does not say is not known.
 */
public final class RecordLoader {
  static final String NOW = "now";

  private final Vocabulary vocabulary;
  private final Problems problems;
  private final Moments moments;

  private RecordLoader(Vocabulary vocabulary, Problems problems) {
    this.vocabulary = vocabulary;
    this.problems = problems;
    this.moments = new Moments(problems);
  }

  /** A record, in the lists and the events of a vocabulary. */
  public static Loaded<TubeRecord> load(YamlNode node, Vocabulary vocabulary) {
    Problems problems = new Problems();
    TubeRecord read = new RecordLoader(vocabulary, problems).read(node);
    return problems.conclude(() -> read);
  }

  private TubeRecord read(YamlNode node) {
    Fields fields = Fields.of(node, "a tube's record", problems);
    Optional<Located<LocalDateTime>> now =
        fields
            .optionalText(NOW)
            .flatMap(text -> moments.read(text).map(m -> Located.of(m, text.span())));
    Map<String, List<TubeRecord.Item>> lists = new LinkedHashMap<>();
    for (YamlMap.Entry entry : fields.entries()) {
      if (!List.of(NOW, EventsReader.KEY).contains(entry.key().text())) {
        list(entry).ifPresent(kind -> lists.put(kind.name(), items(kind, entry, now)));
      }
    }
    List<TubeRecord.Event> events =
        new EventsReader(vocabulary, moments, problems).read(fields, now);
    return new TubeRecord(now.map(Located::value), lists, events);
  }

  private Optional<ListKind> list(YamlMap.Entry entry) {
    String name = entry.key().text();
    Optional<ListKind> kind = vocabulary.list(name);
    if (kind.isEmpty()) {
      List<String> may = new ArrayList<>(List.of(NOW, EventsReader.KEY));
      vocabulary.lists().forEach(l -> may.add(l.name()));
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_LIST,
                  entry.key().span(),
                  "a tube's record has no list `" + name + "`")
              .help(Fields.suggest(name, may)));
    }
    return kind;
  }

  private List<TubeRecord.Item> items(
      ListKind kind, YamlMap.Entry entry, Optional<Located<LocalDateTime>> now) {
    if (!(entry.value() instanceof YamlList list)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  entry.value().span(),
                  "`" + kind.name() + "` needs a list, and this is " + entry.value().kind())
              .help("begin each item with a dash and a space"));
      return List.of();
    }
    if (list.items().isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.EMPTY_VALUE,
                  list.span(),
                  "the list `" + kind.name() + "` is empty")
              .help("delete the line if nothing is recorded"));
    }
    return list.items().stream().map(item -> item(kind, item, now)).toList();
  }

  private TubeRecord.Item item(ListKind kind, YamlNode node, Optional<Located<LocalDateTime>> now) {
    String what = "an item of `" + kind.name() + "`";
    Fields fields = Fields.of(node, what, OtherFiles.item(kind), problems);
    Optional<LocalDateTime> at = moment(fields, "at", now);
    Map<String, LocalDateTime> times = new LinkedHashMap<>();
    kind.times().forEach(name -> moment(fields, name, now).ifPresent(t -> times.put(name, t)));
    Findings known = Findings.NONE;
    for (String name : kind.fields().keySet()) {
      known = withField(known, kind.field(name).orElseThrow(), fields);
    }
    fields.done();
    notEmpty(node, at.isPresent() || !times.isEmpty() || !known.entries().isEmpty());
    return new TubeRecord.Item(at, times, known, Place.at(fields.span()));
  }

  private Optional<LocalDateTime> moment(
      Fields fields, String key, Optional<Located<LocalDateTime>> now) {
    return fields.optionalText(key).flatMap(text -> moments.past(text, now));
  }

  private Findings withField(Findings known, Finding field, Fields fields) {
    return fields
        .optional(field.name())
        .flatMap(
            node ->
                new FindingsLoader(vocabulary, problems)
                    .seen(field, node)
                    .map(seen -> new Findings.Entry(seen, Place.at(node.span()))))
        .map(entry -> known.with(field.name(), entry))
        .orElse(known);
  }

  /** An item of which nothing is known may be a slip of the hand, and would make all uncertain. */
  private void notEmpty(YamlNode node, boolean something) {
    if (!something && !problems.anyError()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.EMPTY_VALUE, node.span(), "an item of which nothing is known")
              .help("write what is recorded of it, or delete it"));
    }
  }
}
