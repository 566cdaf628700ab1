package org.tidemark.load;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Barred;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Worse;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Reads one finding, in two passes: first alone, then the findings that it hangs on. */
final class FindingReader {
  private final YamlMap.Entry entry;
  private final Fields fields;
  private final Problems problems;
  private final Finding bare;
  private final Optional<YamlNode> applies;
  private final Optional<Located<String>> usual;

  FindingReader(YamlMap.Entry entry, Problems problems) {
    this.entry = entry;
    this.problems = problems;
    this.fields = Fields.of(entry.value(), "the finding `" + entry.key().text() + "`", problems);
    this.bare = readAlone();
    this.applies = fields.optional("applies");
    this.usual = fields.optionalText("usual");
    fields.done();
  }

  String name() {
    return entry.key().text();
  }

  Finding withoutConditions() {
    return bare;
  }

  Optional<Located<String>> usual() {
    return usual;
  }

  private Finding readAlone() {
    String asks = fields.text("asks").value();
    Domain domain = new DomainReader(entry, fields, problems).read();
    Worse worse = worse(domain);
    Optional<Located<String>> whenClosed = fields.optionalText("when-closed");
    Optional<String> closed = whenClosed.map(t -> checkedOption(t, domain));
    whenClosed.ifPresent(t -> isLeastWorrying(t, worse));
    BigDecimal order =
        fields
            .requiredText("ask")
            .flatMap(t -> Scalars.number(t, "", problems))
            .orElse(BigDecimal.ZERO);
    Finding alone =
        new Finding(
            name(),
            asks,
            fields.optionalText("short").map(Located::value),
            domain,
            worse,
            List.of(),
            closed,
            barred(domain),
            order,
            fields.optionalText("renew").map(Located::value),
            fields.optionalText("how").map(Located::value),
            Optional.empty(),
            Place.at(entry.key().span()));
    return alone.with(new PublishedReader(alone, problems).read(fields));
  }

  private Worse worse(Domain domain) {
    Optional<YamlNode> node = fields.required("worse");
    if (node.isEmpty()) {
      return new Worse.Neither();
    }
    if (node.get() instanceof YamlText text) {
      return switch (text.text()) {
        case "higher" -> new Worse.Higher();
        case "lower" -> new Worse.Lower();
        case "neither" -> new Worse.Neither();
        default -> wrongWorse(node.get());
      };
    }
    if (node.get() instanceof YamlList) {
      return new Worse.Ranked(
          fields.texts("worse").stream().map(t -> checkedOption(t, domain)).toList());
    }
    return wrongWorse(node.get());
  }

  private Worse wrongWorse(YamlNode node) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD,
                node.span(),
                "`worse` says which way the finding gets more worrying")
            .help(
                "write higher, lower, neither, or a list of options from the least to the most worrying"));
    return new Worse.Neither();
  }

  /** Nobody looks at what does not apply, so it must not stand for trouble. */
  private void isLeastWorrying(Located<String> closed, Worse worse) {
    if (worse instanceof Worse.Ranked ranked && ranked.leastToMost().indexOf(closed.value()) > 0) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WORRYING_WHEN_CLOSED,
                  closed.span(),
                  "when `"
                      + name()
                      + "` does not apply it would be `"
                      + closed.value()
                      + "`, which `worse` calls worrying")
              .help("write `" + ranked.leastToMost().get(0) + "`, or change the order of `worse`"));
    }
  }

  private String checkedOption(Located<String> text, Domain domain) {
    if (domain.option(text.value()).isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_OPTION,
                  text.span(),
                  "`" + name() + "` cannot be `" + text.value() + "`")
              .help(
                  Fields.suggest(
                      text.value(), domain.options().stream().map(Option::name).toList())));
    }
    return text.value();
  }

  private Optional<Barred> barred(Domain domain) {
    List<String> options =
        fields.texts("barred").stream().map(t -> checkedOption(t, domain)).toList();
    if (options.isEmpty()) {
      return Optional.empty();
    }
    String because = fields.text("barred-because").value();
    List<String> words = fields.texts("barred-words").stream().map(Located::value).toList();
    return Optional.of(new Barred(name(), options, because, words, List.of()));
  }

  /** The finding with the ones that it hangs on. */
  Finding whole(Map<String, Finding> all) {
    return new Finding(
        bare.name(),
        bare.asks(),
        bare.shortly(),
        bare.domain(),
        bare.worse(),
        parents(all),
        bare.whenClosed(),
        bare.barred(),
        bare.askingOrder(),
        bare.renew(),
        bare.how(),
        bare.published(),
        bare.place());
  }

  private List<Condition.Options> parents(Map<String, Finding> all) {
    return applies
        .map(
            node ->
                Fields.of(node, "`applies`", problems).entries().stream()
                    .flatMap(e -> parent(e, all).stream())
                    .toList())
        .orElse(List.of());
  }

  private Optional<Condition.Options> parent(YamlMap.Entry e, Map<String, Finding> all) {
    Finding parent = all.get(e.key().text());
    if (parent == null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  e.key().span(),
                  "no finding is called `" + e.key().text() + "`")
              .help(Fields.suggest(e.key().text(), List.copyOf(all.keySet()))));
      return Optional.empty();
    }
    Set<String> options = new LinkedHashSet<>();
    for (Located<String> text : fields.some(e)) {
      if (parent.domain().option(text.value()).isEmpty()) {
        problems.add(cannotBe(parent, text));
      }
      options.add(text.value());
    }
    return Optional.of(new Condition.Options(parent.name(), options));
  }

  private static Diagnostic cannotBe(Finding parent, Located<String> text) {
    List<String> options = parent.domain().options().stream().map(Option::name).toList();
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_OPTION,
            text.span(),
            "`" + parent.name() + "` cannot be `" + text.value() + "`")
        .help(Fields.suggest(text.value(), options));
  }
}
