package org.tidemark.report;

import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.source.Diagnostic;

/** What was exported, as JSON. */
public final class DmnJson {
  private DmnJson() {}

  /**
   * What was exported.
   *
   * @param policy the policy
   * @param questions the questions that the tables answer
   * @param export the tables
   * @param file where they were written; without it they stand in the JSON
   * @param remarks what there is to say about the policy
   */
  public static String of(
      EffectivePolicy policy,
      List<EffectiveQuestion> questions,
      DmnExport export,
      Optional<String> file,
      List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("policy", policy.name());
          json.number("edition", policy.header().edition());
          json.texts("questions", questions.stream().map(EffectiveQuestion::name).toList());
          json.text("code", export.code());
          json.text("file", file);
          json.text("dmn", file.isPresent() ? Optional.empty() : Optional.of(export.xml()));
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }
}
