package org.tidemark;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.layer.DateChecks;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.print.CardFiles;
import org.tidemark.print.SignOff;
import org.tidemark.print.SignOffTables;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Prover;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.trial.AnswerTable;

/** Works out all that stands on the sheet for those who approve a policy. */
final class SignOffDesk {
  private final PolicyShelf shelf;
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final CardFiles files;

  SignOffDesk(PolicyShelf shelf, Lazy<Loaded<Bibliography>> bibliography, Resources resources) {
    this.shelf = shelf;
    this.bibliography = bibliography;
    this.files = name -> resources.text("content/cards/" + name);
  }

  Loaded<String> page(
      Loaded<EffectivePolicy> policy, Optional<EffectivePolicy> earlier, LocalDate today) {
    return policy.match(
        sound ->
            shelf
                .words()
                .match(
                    words ->
                        SignOffTables.of(sound, words, today, files)
                            .match(
                                tables -> page(sound, earlier, today, tables, policy.diagnostics()),
                                Loaded::<String>broken),
                    Loaded::<String>broken),
        Loaded::broken);
  }

  private Loaded<String> page(
      EffectivePolicy policy,
      Optional<EffectivePolicy> earlier,
      LocalDate today,
      List<AnswerTable> tables,
      List<Diagnostic> ofItsFile) {
    List<Diagnostic> remarks = new ArrayList<>(ofItsFile);
    remarks.addAll(DateChecks.of(policy.header(), today));
    return bibliography
        .get()
        .match(
            publications ->
                new SignOff(policy, earlier, files, today)
                    .page(
                        new SignOff.Findings(
                            tables,
                            new Prover().prove(policy, policy.heldAgainst()),
                            earlier.map(e -> Comparison.of(e, policy, Prover.BUDGET)),
                            remarks,
                            publications)),
            Loaded::broken);
  }
}
