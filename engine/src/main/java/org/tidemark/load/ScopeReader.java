package org.tidemark.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Scope;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads whom something is for: a policy, or a thing that it lists. */
final class ScopeReader {
  private static final Set<String> NOT_SCOPE = Set.of("see", "source");

  private final Vocabulary vocabulary;
  private final Problems problems;

  ScopeReader(Vocabulary vocabulary, Problems problems) {
    this.vocabulary = vocabulary;
    this.problems = problems;
  }

  /** Whom a policy is for; a draft may leave that open. */
  Scope read(Fields fields, Citations citations, boolean open) {
    if (!open) {
      fields.required("for");
    }
    Map<String, Span> shutOut = new HashMap<>();
    return new Scope(
        open ? List.of() : tests(fields),
        fields.list("not-for", node -> exclusion(node, citations, shutOut)),
        !open,
        Place.at(fields.key("for")));
  }

  /** What stands in `for`; none when it does not stand there. */
  List<Condition.Options> tests(Fields fields) {
    return fields
        .optional("for")
        .map(n -> scopeTests(Fields.of(n, "`for`", problems), Set.of()))
        .orElse(List.of());
  }

  private Scope.Exclusion exclusion(YamlNode node, Citations citations, Map<String, Span> shutOut) {
    Fields fields = Fields.of(node, "an exclusion", problems);
    Optional<String> see =
        fields.optionalText("see").map(Located::value).filter(v -> !v.equals("not-stated"));
    List<String> sources = citations.read(fields, "source");
    List<Condition.Options> tests = scopeTests(fields, NOT_SCOPE);
    if (node instanceof YamlMap map && named(map) != 1) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE, node.span(), "an exclusion names one finding")
              .help("write for example {place: critical-care, see: name-of-its-policy}"));
    }
    tests.forEach(t -> t.options().forEach(o -> once(t.finding() + ": " + o, node, shutOut)));
    return new Scope.Exclusion(
        tests.isEmpty() ? new Condition.Options("", Set.of()) : tests.get(0),
        see,
        sources,
        Place.at(node.span()));
  }

  /** Whoever is shut out twice may be sent two ways. */
  private void once(String who, YamlNode node, Map<String, Span> shutOut) {
    Span first = shutOut.putIfAbsent(who, node.span());
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME, node.span(), "`" + who + "` is shut out twice")
              .and(first, "it is shut out here first")
              .help("keep the one that says which policy to use"));
    }
  }

  private static long named(YamlMap exclusion) {
    return exclusion.entries().stream().filter(e -> !NOT_SCOPE.contains(e.key().text())).count();
  }

  private List<Condition.Options> scopeTests(Fields fields, Set<String> others) {
    List<Condition.Options> tests = new ArrayList<>();
    for (YamlMap.Entry entry : fields.entries()) {
      if (!others.contains(entry.key().text())) {
        scopeTest(fields, entry).ifPresent(tests::add);
      }
    }
    return tests;
  }

  private Optional<Condition.Options> scopeTest(Fields fields, YamlMap.Entry entry) {
    Optional<Finding> finding = vocabulary.finding(entry.key().text());
    if (finding.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  entry.key().span(),
                  "no finding is called `" + entry.key().text() + "`")
              .help(Fields.suggest(entry.key().text(), vocabulary.names())));
      return Optional.empty();
    }
    List<String> may = finding.get().domain().options().stream().map(Option::name).toList();
    Set<String> options = new LinkedHashSet<>();
    for (Located<String> text : fields.some(entry)) {
      if (!may.contains(text.value())) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_OPTION,
                    text.span(),
                    "`" + entry.key().text() + "` cannot be `" + text.value() + "`")
                .help(Fields.suggest(text.value(), may)));
      }
      options.add(text.value());
    }
    return Optional.of(new Condition.Options(entry.key().text(), options));
  }
}
