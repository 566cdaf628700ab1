package org.tidemark.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.load.Fields;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.VocabularyFile;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;
import org.tidemark.trial.AnswerTable;
import org.tidemark.trial.AnswerTables;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** The tables of a sign-off sheet: those that its file asks for, then one for each limit. */
public final class SignOffTables {
  private static final String FILE = "sign-off.yaml";

  private final EffectivePolicy policy;
  private final VocabularyFile words;
  private final LocalDate day;

  private SignOffTables(EffectivePolicy policy, VocabularyFile words, LocalDate day) {
    this.policy = policy;
    this.words = words;
    this.day = day;
  }

  /** A table that the file asks for. */
  private record Wanted(String question, Finding finding, String heading, Findings given) {}

  /**
   * What the file says.
   *
   * @param tables the tables that it asks for
   * @param given by question, what is so whenever it is asked
   */
  private record File(List<Wanted> tables, Map<String, Findings> given) {}

  /**
   * All tables of a policy, question by question.
   *
   * @param policy the policy
   * @param words what findings usually are
   * @param day the day, for the review date
   * @param files where the sheet's file lies
   */
  public static Loaded<List<AnswerTable>> of(
      EffectivePolicy policy, VocabularyFile words, LocalDate day, CardFiles files) {
    SignOffTables tables = new SignOffTables(policy, words, day);
    return files
        .read(FILE)
        .match(text -> new YamlReader().read(text, tables::file), Loaded::<File>broken)
        .match(file -> Loaded.good(tables.all(file)), Loaded::broken);
  }

  private List<AnswerTable> all(File file) {
    List<AnswerTable> all = new ArrayList<>();
    for (EffectiveQuestion question : policy.questions()) {
      Findings given = file.given().getOrDefault(question.name(), Findings.NONE);
      AnswerTables tables = new AnswerTables(policy, question.name(), words, given, day);
      file.tables().stream()
          .filter(w -> w.question().equals(question.name()))
          .forEach(w -> all.addAll(tables.options(w.finding(), w.heading(), w.given())));
      all.addAll(tables.atLimits());
    }
    return all;
  }

  private Loaded<File> file(YamlNode root) {
    Problems problems = new Problems();
    Fields fields = Fields.of(root, "the sign-off sheet's file", problems);
    Map<String, Findings> given = new TreeMap<>();
    fields.named(
        "given",
        entry -> {
          given.put(entry.key().text(), findings(entry.value(), problems));
          return entry.value();
        });
    List<Optional<Wanted>> read = fields.list("tables", node -> table(node, problems));
    fields.done();
    return problems.conclude(
        () -> new File(read.stream().flatMap(Optional::stream).toList(), given));
  }

  private Findings findings(YamlNode node, Problems problems) {
    return problems.keep(FindingsLoader.load(node, policy.vocabulary()), () -> Findings.NONE);
  }

  private Optional<Wanted> table(YamlNode node, Problems problems) {
    Fields fields = Fields.of(node, "a table", problems);
    String question = fields.text("question").value();
    Located<String> name = fields.text("finding");
    String heading = fields.text("heading").value();
    Findings given = fields.required("given").map(n -> findings(n, problems)).orElse(Findings.NONE);
    fields.done();
    Optional<Finding> finding = policy.vocabulary().finding(name.value());
    if (finding.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  name.span(),
                  "no finding is called `" + name.value() + "`")
              .help(
                  Suggestion.nearest(name.value(), policy.vocabulary().names())
                      .map(near -> "did you mean `" + near + "`?")
                      .orElse("write the name of a finding of the vocabulary")));
    }
    return finding.map(f -> new Wanted(question, f, heading, given));
  }
}
