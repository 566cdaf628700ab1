package org.tidemark.load;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.ListKind;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;

/** Reads which lists a tube's record may hold, and what is written of each item. */
final class ListsReader {
  private final Map<String, Finding> findings;
  private final Problems problems;
  private final Names names;

  ListsReader(Map<String, Finding> findings, Problems problems) {
    this.findings = findings;
    this.problems = problems;
    this.names = new Names("list", problems);
  }

  List<ListKind> read(Fields vocabulary) {
    return vocabulary.named("lists", this::list);
  }

  private ListKind list(YamlMap.Entry entry) {
    String name = entry.key().text();
    names.give(name, entry.key().span());
    Fields fields = Fields.of(entry.value(), "the list `" + name + "`", problems);
    Names own = new Names("field", problems);
    own.give("at", entry.key().span());
    String one = fields.text("one").value();
    List<Located<String>> times = fields.texts("times");
    times.forEach(t -> own.give(t.value(), t.span()));
    fields.required("fields");
    Map<String, Domain> domains = new LinkedHashMap<>();
    fields.named(
        "fields",
        e -> {
          own.give(e.key().text(), e.key().span());
          return domains.put(e.key().text(), domain(e));
        });
    fields.done();
    List<String> timeNames = times.stream().map(Located::value).toList();
    return new ListKind(name, one, timeNames, domains, Place.at(entry.key().span()));
  }

  private Domain domain(YamlMap.Entry entry) {
    Fields fields = Fields.of(entry.value(), "the field `" + entry.key().text() + "`", problems);
    Optional<Located<String>> like = fields.optionalText("like");
    Domain domain =
        like.isPresent() ? like(like.get()) : new DomainReader(entry, fields, problems).read();
    fields.done();
    return domain;
  }

  /** The values of a finding, so that they are written once. */
  private Domain like(Located<String> name) {
    Finding finding = findings.get(name.value());
    if (finding == null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  name.span(),
                  "no finding is called `" + name.value() + "`")
              .help(Fields.suggest(name.value(), List.copyOf(findings.keySet()))));
      return new Domain.Choice(List.of());
    }
    return finding.domain();
  }
}
