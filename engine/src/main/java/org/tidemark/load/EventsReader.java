package org.tidemark.load;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.EventKind;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/**
 * Reads what happened to a tube: each event at a time, between two times, or at a time that is not
 * known.
 */
final class EventsReader {
  static final String KEY = "events";

  private final List<String> names;
  private final Moments moments;
  private final Problems problems;

  EventsReader(Vocabulary vocabulary, Moments moments, Problems problems) {
    this.names = vocabulary.events().stream().map(EventKind::name).toList();
    this.moments = moments;
    this.problems = problems;
  }

  List<TubeRecord.Event> read(Fields record, Optional<Located<LocalDateTime>> now) {
    if (!record.has(KEY)) {
      return List.of();
    }
    if (!record.has(RecordLoader.NOW)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.MISSING_KEY,
                  record.key(KEY),
                  "events are listed, and the record does not say what time it is now")
              .help("add a line such as `now: 2026-09-01 14:30`"));
    }
    return record.list(KEY, node -> event(node, now));
  }

  private TubeRecord.Event event(YamlNode node, Optional<Located<LocalDateTime>> now) {
    Fields fields = Fields.of(node, "an event", problems);
    Located<String> name = fields.text("event");
    if (!name.value().isEmpty() && !names.contains(name.value())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_EVENT,
                  name.span(),
                  "the vocabulary has no event called `" + name.value() + "`")
              .help(Fields.suggest(name.value(), names)));
    }
    Optional<LocalDateTime> at = moment(fields, "at", now);
    Optional<LocalDateTime> from = at.or(() -> moment(fields, "not-before", now));
    Optional<LocalDateTime> to = at.or(() -> moment(fields, "not-after", now));
    fields.done();
    if (from.isPresent() && to.isPresent() && from.get().isAfter(to.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.REVERSED, node.span(), "the event ends before it can have begun")
              .help("write the earlier time in not-before"));
    }
    return new TubeRecord.Event(from, to, name.value(), Place.at(node.span()));
  }

  private Optional<LocalDateTime> moment(
      Fields fields, String key, Optional<Located<LocalDateTime>> now) {
    return fields.optionalText(key).flatMap(text -> moments.past(text, now));
  }
}
