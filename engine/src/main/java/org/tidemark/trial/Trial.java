package org.tidemark.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.model.UsualAnswers;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;

/** Tries a policy on worked cases, through the same door as everybody's questions. */
public final class Trial {
  private final EffectivePolicy policy;
  private final Completed completed;
  private final Map<String, Decider> deciders = new HashMap<>();

  public Trial(EffectivePolicy policy, UsualAnswers usual) {
    this.policy = policy;
    this.completed = new Completed(policy.vocabulary(), usual);
    policy
        .questions()
        .forEach(q -> Decider.of(policy, q.name()).ifPresent(d -> deciders.put(q.name(), d)));
  }

  /** The findings that a worked case really asks about, its usual rest filled in. */
  public Findings findings(WorkedCase worked) {
    return completed.findings(worked);
  }

  /**
   * Runs every case; a case that asks a question the policy does not answer is an error, never a
   * skip.
   */
  public Loaded<List<TrialResult>> run(List<WorkedCase> cases, LocalDate today) {
    Problems problems = new Problems();
    List<TrialResult> results = new ArrayList<>();
    for (WorkedCase worked : cases) {
      Decider decider = deciders.get(worked.question());
      if (decider == null) {
        problems.add(noSuchQuestion(worked));
      } else {
        Decision decision = decider.decide(findings(worked), today);
        results.add(new TrialResult(worked, decision, differences(worked, decision)));
      }
    }
    return problems.conclude(() -> List.copyOf(results));
  }

  private Diagnostic noSuchQuestion(WorkedCase worked) {
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_QUESTION,
            worked.place().span(),
            "`" + policy.name() + "` does not answer the question `" + worked.question() + "`")
        .help("it answers: " + String.join(", ", deciders.keySet().stream().sorted().toList()));
  }

  private static List<String> differences(WorkedCase worked, Decision decision) {
    List<String> differences = new ArrayList<>();
    if (decision.outcome() != worked.expect()) {
      differences.add(
          "expected "
              + worked.expect().word()
              + ", and the answer is "
              + decision.outcome().word());
    }
    List<String> fired = decision.reasons().stream().map(Reason::rule).toList();
    worked.rules().stream()
        .filter(r -> !fired.contains(r))
        .forEach(r -> differences.add("the rule `" + r + "` does not fire; these do: " + fired));
    List<String> asked = decision.ask().stream().map(Need::finding).toList();
    worked.needs().stream()
        .filter(n -> !asked.contains(n))
        .forEach(n -> differences.add("`" + n + "` is not asked; these are: " + asked));
    return differences;
  }
}
