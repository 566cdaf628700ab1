package org.tidemark.layer;

import java.util.List;
import org.tidemark.model.Policy;
import org.tidemark.model.RecordList;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/** What a policy has written down is said by the answer to some question. */
final class RecordChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  RecordChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    if (policy.header().kind().servesBedside()) {
      Policy top = policy.parts().get(policy.parts().size() - 1);
      List<String> own = top.care().records().stream().map(RecordList::name).toList();
      policy.care().records().stream()
          .filter(r -> own.contains(r.name()))
          .filter(r -> policy.questions().stream().noneMatch(q -> r.isWrittenAt(q.name())))
          .forEach(this::onNoOccasion);
    }
  }

  private void onNoOccasion(RecordList record) {
    problems.add(
        Diagnostic.warning(
                DiagnosticCode.UNUSED,
                record.place().span(),
                "`" + record.name() + "` stands under `records` and no answer says it")
            .help(
                Suggestion.nearest(record.name(), RecordList.OCCASIONS)
                    .map(near -> "did you mean `" + near + "`?")
                    .orElse(
                        "add when-asked, such as: when-asked: [use]; or name it "
                            + String.join(", ", RecordList.OCCASIONS))));
  }
}
