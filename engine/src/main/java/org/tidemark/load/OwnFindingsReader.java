package org.tidemark.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Finding;
import org.tidemark.model.Policy;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;

/**
 * Reads the findings that a policy asks beside those of the vocabulary. They are written as the
 * vocabulary's are, but for what is usual: a policy that answers must not know that.
 */
final class OwnFindingsReader {
  private final Vocabulary shared;
  private final Problems problems;
  private final List<Finding> own = new ArrayList<>();

  OwnFindingsReader(Vocabulary vocabulary, List<Policy> below, Problems problems) {
    this.shared = vocabulary.with(below.stream().flatMap(p -> p.ownFindings().stream()).toList());
    this.problems = problems;
  }

  List<Finding> read(Fields policy) {
    List<FindingReader> readers = policy.named("own-findings", this::reader);
    Map<String, Finding> all = new LinkedHashMap<>();
    shared.findings().forEach(f -> all.put(f.name(), f));
    readers.forEach(r -> all.putIfAbsent(r.name(), r.withoutConditions()));
    readers.forEach(r -> own.add(r.whole(all)));
    own.forEach(f -> askedAfterItsParents(f, all));
    return List.copyOf(own);
  }

  /** The vocabulary with these findings in it. */
  Vocabulary whole() {
    return shared.with(own);
  }

  private FindingReader reader(YamlMap.Entry entry) {
    String name = entry.key().text();
    Optional<Finding> taken = shared.finding(name);
    taken.ifPresent(
        f ->
            problems.add(
                Diagnostic.error(
                        DiagnosticCode.ALREADY_DEFINED,
                        entry.key().span(),
                        "`" + name + "` is a finding already")
                    .and(f.place().span(), "it is defined here")
                    .help("use it as it is, or give yours another name")));
    FindingReader reader = new FindingReader(entry, problems);
    reader.usual().ifPresent(this::noUsual);
    return reader;
  }

  private void noUsual(Located<String> usual) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                usual.span(),
                "a policy does not know what is usual, so that no answer can rest on it")
            .help("move it to the file of worked cases, under `usual`"));
  }

  private void askedAfterItsParents(Finding finding, Map<String, Finding> all) {
    finding.applies().stream()
        .map(parent -> all.get(parent.finding()))
        .filter(parent -> order(parent).compareTo(finding.askingOrder()) >= 0)
        .findFirst()
        .ifPresent(parent -> problems.add(VocabularyLoader.askedTooEarly(finding, parent.name())));
  }

  private static BigDecimal order(Finding finding) {
    return finding.askingOrder();
  }
}
