package org.tidemark.layer;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.AlertAnswer;
import org.tidemark.model.Care;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/** What a policy says answers an alert is something that the policy has. */
final class AlertChecks {
  private final EffectivePolicy policy;
  private final Problems problems;

  AlertChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    List<String> names = names();
    for (AlertAnswer alert : policy.header().control().alerts()) {
      alert.answeredBy().stream()
          .filter(by -> !names.contains(by.value()))
          .forEach(by -> nothing(alert, by, names));
    }
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    policy.values().forEach(v -> names.add(v.name()));
    policy.bands().forEach(b -> names.add(b.name()));
    policy.barred().forEach(b -> names.add(b.finding()));
    policy.questions().forEach(q -> q.rules().forEach(r -> names.add(r.name())));
    Care care = policy.care();
    care.lapses().forEach(l -> names.add(l.name()));
    care.trays().forEach(t -> names.add(t.name()));
    care.records().forEach(r -> names.add(r.name()));
    care.fallbacks().forEach(f -> names.add(f.name()));
    care.fallbacks().forEach(f -> f.barredSteps().forEach(b -> names.add(b.name())));
    return names;
  }

  private void nothing(AlertAnswer alert, Located<String> by, List<String> names) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.ALERT_NOT_ANSWERED,
                by.span(),
                "`"
                    + by.value()
                    + "` should answer "
                    + alert.alert()
                    + ", and the policy has no such thing")
            .help(
                Suggestion.nearest(by.value(), names)
                    .map(near -> "did you mean `" + near + "`?")
                    .orElse("name a rule, value, band, barred test, lapse, tray, record or step")));
  }
}
