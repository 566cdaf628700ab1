package org.tidemark.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.EventKind;
import org.tidemark.model.Finding;
import org.tidemark.model.ListKind;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads a vocabulary: which findings there are, what is asked about each, and what it may be. */
public final class VocabularyLoader {
  private final Problems problems = new Problems();
  private final Map<String, Value> usual = new LinkedHashMap<>();

  private VocabularyLoader() {}

  public static Loaded<VocabularyFile> load(YamlNode root) {
    return new VocabularyLoader().read(root);
  }

  private Loaded<VocabularyFile> read(YamlNode root) {
    Fields fields = Fields.of(root, "a vocabulary", problems);
    String name = fields.text("vocabulary").value();
    int edition = fields.requiredText("edition").flatMap(t -> Scalars.count(t, problems)).orElse(1);
    Names names = new Names("finding", problems);
    List<FindingReader> readers = new ArrayList<>();
    for (YamlMap.Entry entry :
        fields
            .required("findings")
            .map(n -> Fields.of(n, "`findings`", problems).entries())
            .orElse(List.of())) {
      names.give(entry.key().text(), entry.key().span());
      readers.add(new FindingReader(entry, problems));
    }
    Map<String, Finding> bare = new LinkedHashMap<>();
    readers.forEach(r -> bare.put(r.name(), r.withoutConditions()));
    List<ListKind> lists = new ListsReader(bare, problems).read(fields);
    List<EventKind> events = new EventKindsReader(problems).read(fields);
    fields.done();
    List<Finding> whole = readers.stream().map(r -> r.whole(bare)).toList();
    readers.forEach(r -> r.usual().ifPresent(u -> usual(bare, r.name(), u)));
    noLoops(whole);
    return problems.conclude(
        () ->
            new VocabularyFile(
                new Vocabulary(name, edition, whole, lists, events), new UsualAnswers(usual)));
  }

  private void usual(Map<String, Finding> bare, String name, Located<String> text) {
    FindingsLoader.value(text, java.util.Objects.requireNonNull(bare.get(name)), problems)
        .ifPresent(v -> usual.put(name, v));
  }

  /**
   * A finding applies because of others that are asked before it; so there is always a first one to
   * ask.
   */
  private void noLoops(List<Finding> findings) {
    Map<String, BigDecimal> order = new LinkedHashMap<>();
    findings.forEach(f -> order.put(f.name(), f.askingOrder()));
    for (Finding finding : findings) {
      Optional<String> later =
          finding.applies().stream()
              .map(c -> c.finding())
              .filter(
                  p -> order.getOrDefault(p, BigDecimal.ZERO).compareTo(finding.askingOrder()) >= 0)
              .findFirst();
      later.ifPresent(parent -> problems.add(askedTooEarly(finding, parent)));
    }
  }

  static Diagnostic askedTooEarly(Finding finding, String parent) {
    return Diagnostic.error(
            DiagnosticCode.CANNOT_HOLD,
            finding.place().span(),
            "`" + finding.name() + "` hangs on `" + parent + "`, which is asked later")
        .help("give `" + parent + "` a lower `ask`");
  }
}
