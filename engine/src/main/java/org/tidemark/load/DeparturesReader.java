package org.tidemark.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidemark.model.Departure;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlNode;

/** Reads in what a policy declares to be looser, with who decided it and until when. */
final class DeparturesReader {
  private static final String DEPARTS = "departs-from-floor";
  private static final String ACCEPTS = "accepts-barred";

  private final Header header;
  private final Citations citations;
  private final Problems problems;
  private final Map<String, Span> given = new HashMap<>();

  DeparturesReader(Header header, Citations citations, Problems problems) {
    this.header = header;
    this.citations = citations;
    this.problems = problems;
  }

  List<Departure> read(Fields policy) {
    List<Departure> all = new ArrayList<>();
    policy.list(DEPARTS, this::departure).forEach(d -> d.ifPresent(all::add));
    if (policy.has(ACCEPTS) && header.buildsOn().isPresent()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_KEY,
                  policy.key(ACCEPTS),
                  "`" + ACCEPTS + "` is for a policy that builds on nothing")
              .help("write it under `" + DEPARTS + "`, each with `test` and `rule`"));
    }
    policy.list(ACCEPTS, this::accepted).forEach(d -> d.ifPresent(all::add));
    return List.copyOf(all);
  }

  private Optional<Departure> accepted(YamlNode node) {
    Fields fields = Fields.of(node, "an accepted test", problems);
    Located<String> test = fields.text(Departure.Kind.TEST.word());
    return Optional.of(departure(Departure.Kind.TEST, test, fields));
  }

  /** One departure names one thing, and for a test the rule that rests on it. */
  private Optional<Departure> departure(YamlNode node) {
    Fields fields = Fields.of(node, "a departure", problems);
    List<Departure.Kind> kinds =
        Arrays.stream(Departure.Kind.values()).filter(k -> fields.has(k.word())).toList();
    boolean test = kinds.contains(Departure.Kind.TEST);
    List<Departure.Kind> named =
        kinds.stream().filter(k -> !(test && k == Departure.Kind.RULE)).toList();
    if (named.size() != 1) {
      notOne(fields.span());
      return Optional.empty();
    }
    Departure.Kind kind = named.get(0);
    return Optional.of(departure(kind, fields.text(kind.word()), fields));
  }

  private void notOne(Span at) {
    String names =
        Arrays.stream(Departure.Kind.values())
            .map(k -> "`" + k.word() + "`")
            .collect(Collectors.joining(", "));
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE, at, "a departure names one thing that it departs in")
            .help("write one of " + names + "; a test stands with the rule that rests on it"));
  }

  private Departure departure(Departure.Kind kind, Located<String> name, Fields fields) {
    Optional<String> rule =
        kind == Departure.Kind.TEST
            ? fields.requiredText("rule").map(Located::value)
            : Optional.empty();
    String why = fields.text("why").value();
    Optional<String> by = stated(fields, "approved-by").map(Located::value);
    Optional<LocalDate> until =
        stated(fields, "until").flatMap(text -> Scalars.date(text, problems));
    List<String> sources = citations.read(fields, "source");
    fields.done();
    once(kind.word() + rule.map(r -> " in " + r).orElse(""), name);
    return new Departure(
        kind, name.value(), rule, why, by, until, header.name(), sources, Place.at(name.span()));
  }

  private void once(String kind, Located<String> name) {
    Span first = given.putIfAbsent(kind + " " + name.value(), name.span());
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  name.span(),
                  "the " + kind + " `" + name.value() + "` stands in two departures")
              .and(first, "it stands here first")
              .help("keep one of them"));
    }
  }

  /** Only the reading of somebody else's page may leave it open who decided, and until when. */
  private Optional<Located<String>> stated(Fields fields, String key) {
    Optional<Located<String>> text = fields.requiredText(key);
    boolean open = text.isPresent() && text.get().value().equals("not-stated");
    if (open && header.kind() != PolicyKind.PUBLISHED) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.VALUE_NOT_STATED,
                  text.get().span(),
                  "a departure of your own says `" + key + "`")
              .help("write who decided it, by role, and its last day"));
    }
    return text.filter(t -> !open);
  }
}
