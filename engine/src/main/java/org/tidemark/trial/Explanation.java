package org.tidemark.trial;

import java.util.List;
import java.util.Set;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.model.Findings;

/**
 * How the answer to a worked case comes about, step by step, in bedside words.
 *
 * @param result the case, its answer, and how that differs from what is expected
 * @param steps the steps
 */
public record Explanation(TrialResult result, List<Step> steps) {
  public Explanation {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param name its name, for programs
   * @param heading its name, for people
   * @param lines what there is to say; never nothing
   */
  public record Step(String name, String heading, List<String> lines) {
    public Step {
      lines = List.copyOf(lines);
    }
  }

  static Explanation of(
      CompiledQuestion question, Findings findings, Set<String> recorded, TrialResult result) {
    return new Explanation(result, new Explainer(question, findings, recorded, result).steps());
  }
}
