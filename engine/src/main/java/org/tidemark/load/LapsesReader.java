package org.tidemark.load;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.EventKind;
import org.tidemark.model.FeedMode;
import org.tidemark.model.Lapse;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/** Reads what makes a check lapse: an event, a clock, a use, something seen. */
final class LapsesReader {
  private static final List<String> TRIGGERS = List.of("on", "every", "use", "seen", "by-hand");
  private static final List<String> DOES = List.of("lapse", "suspend", "end");

  private final String layer;
  private final Known known;
  private final Wording wording;
  private final Backings backings;
  private final Problems problems;
  private final Names names;
  private final ClocksReader clocks;

  LapsesReader(String layer, Known known, Wording wording, Backings backings, Problems problems) {
    this.layer = layer;
    this.known = known;
    this.wording = wording;
    this.backings = backings;
    this.problems = problems;
    this.names = new Names("lapse", problems);
    this.clocks = new ClocksReader(known, problems);
  }

  /** The lapses; a source that states none says {@code not-stated}. */
  List<Lapse> read(Fields policy) {
    return policy.list("lapses", this::lapse);
  }

  private Lapse lapse(YamlNode node) {
    Fields fields = Fields.of(node, "a lapse", problems);
    Located<String> name = fields.text("lapse");
    names.give(name.value(), name.span());
    String says = wording.required(fields, "when");
    Lapse.Triggers triggers = triggers(fields);
    if (TRIGGERS.stream().noneMatch(fields::has)) {
      problems.add(never(name));
    }
    Lapse lapse =
        new Lapse(
            name.value(),
            says,
            triggers,
            does(fields),
            layer,
            backings.read(fields),
            Place.at(name.span()));
    fields.done();
    return lapse;
  }

  private static Diagnostic never(Located<String> name) {
    return Diagnostic.error(
            DiagnosticCode.LAPSE_NEVER,
            name.span(),
            "nothing sets the lapse `" + name.value() + "` off")
        .help(
            "add `on`, `every`, `use` or `seen`; if a person judges it, say why in a line `by-hand`");
  }

  private Lapse.Triggers triggers(Fields fields) {
    Set<String> events = events(fields, "on");
    Optional<Lapse.Clock> clock = clocks.read(fields);
    Set<String> uses = uses(fields);
    Set<FeedMode> modes = modes(fields);
    if (fields.has("feed-mode") && !fields.has("every") && !fields.has("use")) {
      wrong(
          fields,
          "feed-mode",
          "`feed-mode` narrows `every` or `use`, and there is neither",
          "delete it, or add the clock or the use that it belongs to");
    }
    return new Lapse.Triggers(events, clock, uses, modes, seen(fields), byHand(fields));
  }

  private Optional<Condition> seen(Fields fields) {
    return fields.optional("seen").map(node -> new ConditionReader(known, problems).given(node));
  }

  private Optional<String> byHand(Fields fields) {
    return wording.optional(fields, "by-hand");
  }

  /** Names of events of the vocabulary; at least one where the field is there. */
  private Set<String> events(Fields fields, String key) {
    List<String> may = known.vocabulary().events().stream().map(EventKind::name).toList();
    return some(fields, key, may, "event");
  }

  private Set<String> uses(Fields fields) {
    List<String> may =
        known.vocabulary().events().stream().flatMap(e -> e.use().stream()).distinct().toList();
    return some(fields, "use", may, "use");
  }

  private Set<String> some(Fields fields, String key, List<String> may, String what) {
    Set<String> some = new LinkedHashSet<>();
    if (!fields.has(key)) {
      return some;
    }
    for (Located<String> text : fields.someTexts(key)) {
      if (!may.contains(text.value())) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_EVENT,
                    text.span(),
                    "the vocabulary has no " + what + " called `" + text.value() + "`")
                .help(Fields.suggest(text.value(), may)));
      }
      some.add(text.value());
    }
    return some;
  }

  private Set<FeedMode> modes(Fields fields) {
    Set<FeedMode> modes = EnumSet.noneOf(FeedMode.class);
    if (fields.has("feed-mode")) {
      for (Located<String> text : fields.someTexts("feed-mode")) {
        fields.constant(text, FeedMode.class, "feed-mode").ifPresent(modes::add);
      }
    }
    return modes;
  }

  private Lapse.Does does(Fields fields) {
    Optional<Located<String>> word = fields.optionalText("does");
    Set<String> until = events(fields, "until");
    String does = word.map(Located::value).orElse("lapse");
    word.filter(w -> !DOES.contains(w.value()))
        .ifPresent(w -> fields.unknownWord(w, DOES, "`does`"));
    if (does.equals("suspend") && !fields.has("until")) {
      wrong(
          fields,
          "does",
          "the lapse does not say until when it suspends the check",
          "add a line `until: [...]` with the events that settle it");
    }
    if (!does.equals("suspend") && fields.has("until")) {
      wrong(
          fields,
          "until",
          "`until` belongs to a lapse that suspends",
          "write `does: suspend`, or delete `until`");
    }
    if (List.of("suspend", "end").contains(does) && !fields.has("on")) {
      wrong(
          fields,
          "does",
          "only an event can " + does + " a check",
          "name the event under `on`, or delete `does`");
    }
    return switch (does) {
      case "suspend" -> new Lapse.SuspendsUntil(until);
      case "end" -> new Lapse.Ends();
      default -> new Lapse.Lapses();
    };
  }

  private void wrong(Fields fields, String key, String message, String help) {
    problems.add(Diagnostic.error(DiagnosticCode.WRONG_SHAPE, fields.key(key), message).help(help));
  }
}
