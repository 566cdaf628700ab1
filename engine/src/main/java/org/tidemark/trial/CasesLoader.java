package org.tidemark.trial;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.decide.Kind;
import org.tidemark.load.Fields;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlNode;

/** Reads worked cases. A file without any is an error: a trial of nothing must never pass. */
public final class CasesLoader {
  private final Vocabulary vocabulary;
  private final Problems problems = new Problems();
  private final Map<String, Value> usual = new HashMap<>();
  private final Map<String, Span> names = new HashMap<>();

  private CasesLoader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  public static Loaded<CaseFile> load(YamlNode root, Vocabulary vocabulary) {
    return new CasesLoader(vocabulary).read(root);
  }

  private Loaded<CaseFile> read(YamlNode root) {
    Fields fields = Fields.of(root, CaseLanguage.FILE, problems);
    Located<String> policy = fields.text("cases-of");
    usual(fields);
    fields.required("cases");
    List<WorkedCase> cases = fields.list("cases", this::workedCase);
    fields.done();
    if (cases.isEmpty()) {
      problems.add(
          Diagnostic.error(DiagnosticCode.NO_CASES, fields.span(), "there is no worked case here")
              .help("write one: findings, and the answer that is expected"));
    }
    return problems.conclude(() -> new CaseFile(policy, cases));
  }

  /** What a policy's own findings usually are, for these cases alone. */
  private void usual(Fields file) {
    Optional<YamlNode> node = file.optional("usual");
    node.map(n -> problems.keep(FindingsLoader.load(n, vocabulary), () -> Findings.NONE))
        .ifPresent(
            all -> all.entries().forEach((name, entry) -> usual.put(name, value(name, entry))));
  }

  private Value value(String name, Findings.Entry entry) {
    Seen seen = entry.seen();
    if (seen.from().isPresent() && seen.from().equals(seen.to()) && seen.options().isEmpty()) {
      return new Value.Amount(seen.from().get());
    }
    if (seen.from().isEmpty() && seen.options().size() == 1) {
      return Value.word(seen.options().iterator().next());
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                entry.place().span(),
                "what `" + name + "` usually is must be one thing")
            .help("write one option, or one number"));
    return Value.word("");
  }

  private WorkedCase workedCase(YamlNode node) {
    Fields fields = Fields.of(node, CaseLanguage.CASE, problems);
    Located<String> name = fields.text("case");
    isNew(name);
    WorkedCase read =
        new WorkedCase(
            name.value(),
            fields.text("kind").value(),
            fields.text("source").value(),
            fields.text("question").value(),
            fields.requiredWord("rest", Rest.class).orElse(Rest.UNKNOWN),
            findings(fields),
            record(fields),
            expected(fields),
            fields.optionalText("case-says").map(Located::value),
            fields.optionalText("why").map(Located::value),
            texts(fields, "not-expressed"),
            new UsualAnswers(usual),
            Place.at(name.span()));
    fields.done();
    return read;
  }

  private static Expected expected(Fields fields) {
    return new Expected(
        fields.requiredWord("expect", Outcome.class).orElse(Outcome.HOLD),
        fields.word("expect-kind", Kind.class),
        texts(fields, "rules"),
        texts(fields, "not-rules"),
        texts(fields, "needs"),
        texts(fields, "next"),
        texts(fields, "call"));
  }

  private Findings findings(Fields fields) {
    Optional<YamlNode> node = fields.required("findings");
    return node.map(n -> problems.keep(FindingsLoader.load(n, vocabulary), () -> Findings.NONE))
        .orElse(Findings.NONE);
  }

  private TubeRecord record(Fields fields) {
    Optional<YamlNode> written = fields.optional("record");
    return written
        .map(n -> problems.keep(RecordLoader.load(n, vocabulary), () -> TubeRecord.NONE))
        .orElse(TubeRecord.NONE);
  }

  private static List<String> texts(Fields fields, String key) {
    return fields.texts(key).stream().map(Located::value).toList();
  }

  private void isNew(Located<String> name) {
    Span first = names.putIfAbsent(name.value(), name.span());
    if (first != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  name.span(),
                  "the case `" + name.value() + "` stands twice")
              .and(first, "it stands here first")
              .help("give one of them another name, such as " + name.value() + "b"));
    }
  }
}
