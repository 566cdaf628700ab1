package org.tidemark.load;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.EventKind;
import org.tidemark.model.FeedMode;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlText;

/** Reads which events a tube's record may hold, and what they are to the tube. */
final class EventKindsReader {
  private final Problems problems;
  private final Names names;

  EventKindsReader(Problems problems) {
    this.problems = problems;
    this.names = new Names("event", problems);
  }

  List<EventKind> read(Fields vocabulary) {
    return vocabulary.named("events", this::kind);
  }

  /** The words alone, or with what the event means. */
  private EventKind kind(YamlMap.Entry entry) {
    String name = entry.key().text();
    Place place = Place.at(entry.key().span());
    names.give(name, entry.key().span());
    if (entry.value() instanceof YamlText words && !words.isMissing()) {
      return new EventKind(name, words.text(), place);
    }
    Fields fields = Fields.of(entry.value(), "the event `" + name + "`", problems);
    Optional<EventKind.Means> means = fields.requiredWord("means", EventKind.Means.class);
    Optional<Located<String>> use = fields.optionalText("use");
    means.ifPresent(m -> hasItsUse(m, use, name, fields));
    EventKind kind =
        new EventKind(
            name,
            fields.text("says").value(),
            means,
            use.map(Located::value),
            fields.word("feed-mode", FeedMode.class),
            place);
    fields.done();
    return kind;
  }

  private void hasItsUse(
      EventKind.Means means, Optional<Located<String>> use, String name, Fields fields) {
    boolean needed =
        switch (means) {
          case USE, USE_BEGINS, USE_PAUSES, USE_ENDS -> true;
          case PASSED, OUT, CHECKED, HUNG, TAKEN_DOWN -> false;
        };
    if (needed != use.isPresent()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  fields.key("means"),
                  "the event `"
                      + name
                      + (needed ? "` does not say what goes down" : "` is no use of the tube"))
              .help(needed ? "add a line `use: feed`, or what it is" : "delete its line `use`"));
    }
  }
}
