package org.tidemark;

import java.nio.file.Path;
import java.util.Optional;
import org.tidemark.load.Fields;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * What a file of findings holds.
 *
 * @param question the question, if the file names one
 * @param findings what is known
 * @param record what was written of the tube
 */
public record Asked(Optional<String> question, Findings findings, TubeRecord record) {
  private static final String FINDINGS = "findings";
  private static final String RECORD = "record";

  static Loaded<Asked> read(Path file, Vocabulary vocabulary) {
    return new YamlReader().read(file, root -> read(root, vocabulary));
  }

  /**
   * Findings alone, or under {@code findings} with the question and the tube's record beside them.
   */
  static Loaded<Asked> read(YamlNode root, Vocabulary vocabulary) {
    boolean wrapped =
        root instanceof YamlMap map
            && (map.entry(FINDINGS).isPresent()
                || map.entry("question").isPresent()
                || map.entry(RECORD).isPresent());
    return wrapped ? wrapped(root, vocabulary) : alone(root, vocabulary);
  }

  private static Loaded<Asked> alone(YamlNode root, Vocabulary vocabulary) {
    Loaded<Findings> all = FindingsLoader.load(root, vocabulary);
    return all.match(
        known ->
            Loaded.good(new Asked(Optional.empty(), known, TubeRecord.NONE), all.diagnostics()),
        Loaded::broken);
  }

  private static Loaded<Asked> wrapped(YamlNode root, Vocabulary vocabulary) {
    Problems problems = new Problems();
    Fields fields = Fields.of(root, "a file of findings", problems);
    Optional<String> question = fields.optionalText("question").map(Located::value);
    Optional<YamlNode> written = fields.optional(RECORD);
    Optional<YamlNode> node =
        written.isPresent() ? fields.optional(FINDINGS) : fields.required(FINDINGS);
    fields.done();
    Findings findings =
        node.map(n -> problems.keep(FindingsLoader.load(n, vocabulary), () -> Findings.NONE))
            .orElse(Findings.NONE);
    TubeRecord tube =
        written
            .map(n -> problems.keep(RecordLoader.load(n, vocabulary), () -> TubeRecord.NONE))
            .orElse(TubeRecord.NONE);
    return problems.conclude(() -> new Asked(question, findings, tube));
  }
}
