package org.tidemark.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Statement;
import org.tidemark.print.StatementWords;
import org.tidemark.prove.Change;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Verdict;
import org.tidemark.prove.Witness;
import org.tidemark.source.Diagnostic;

/** What is proved of a policy, and how two editions differ, as JSON. */
public final class ProofsJson {
  private ProofsJson() {}

  public static String of(EffectivePolicy policy, List<Proof> proofs, List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("policy", policy.name());
          json.number("edition", policy.header().edition());
          json.flag("all-proved", proofs.stream().allMatch(p -> p.verdict().proved()));
          json.objects("departures", policy.departed(), DepartedJson::departed);
          json.objects("claims", proofs, (one, proof) -> proof(one, policy, proof));
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void proof(Json json, EffectivePolicy policy, Proof proof) throws IOException {
    json.text("claim", proof.claim().kind().word());
    json.text("question", Optional.of(proof.claim().question()).filter(q -> !q.isEmpty()));
    json.text("about", proof.claim().subject());
    json.text("sentence", proof.claim().sentence());
    stated(json, policy, StatementWords.behind(policy, proof.claim()));
    json.text("verdict", verdict(proof.verdict()));
    if (proof.verdict() instanceof Verdict.Refuted refuted) {
      json.object("case", one -> witness(one, refuted.witness()));
    }
  }

  private static void stated(Json json, EffectivePolicy policy, Optional<Statement> statement)
      throws IOException {
    StatementWords words = new StatementWords(policy);
    json.text("given", statement.map(words::given));
    json.text("answer", statement.map(words::answer));
    json.text("said-by", statement.map(Statement::layer));
    json.text("because", statement.flatMap(Statement::because).map(policy::fill));
    json.texts("sources", statement.map(s -> s.backing().sources()).orElse(List.of()));
  }

  private static String verdict(Verdict verdict) {
    if (verdict.proved()) {
      return "proved";
    }
    return verdict instanceof Verdict.Refuted ? "refuted" : "undecided";
  }

  private static void witness(Json json, Witness witness) throws IOException {
    json.texts("answers", witness.answers());
    json.texts("words", witness.words());
    json.object(
        "findings",
        findings -> {
          for (var entry : witness.findings().entries().entrySet()) {
            findings.text(entry.getKey(), entry.getValue().seen().words());
          }
        });
  }

  public static String of(
      EffectivePolicy before,
      EffectivePolicy after,
      Comparison comparison,
      List<Diagnostic> remarks) {
    return Json.object(
        json -> {
          json.text("was", before.name());
          json.number("was-edition", before.header().edition());
          json.text("is", after.name());
          json.number("is-edition", after.header().edition());
          json.flag("settled", comparison.settled());
          json.flag("equal", comparison.equal());
          json.texts("readings", comparison.readings());
          json.objects("changes", comparison.changes(), ProofsJson::change);
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void change(Json json, Change change) throws IOException {
    json.text("question", change.question());
    json.text("rule", change.rule());
    json.text("from", change.from().word());
    json.text("to", change.to().word());
    json.texts("telling", change.telling());
    json.object("case", one -> witness(one, change.example()));
  }
}
