package org.tidemark.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.count.Derived;
import org.tidemark.count.Deriving;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.VocabularyFile;
import org.tidemark.model.Findings;
import org.tidemark.model.UsualAnswers;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/** Tries a policy on worked cases, through the same door as everybody's questions. */
public final class Trial {
  private final EffectivePolicy policy;
  private final Completed completed;
  private final Map<String, Decider> deciders = new HashMap<>();
  private final Map<String, CompiledQuestion> compiled = new LinkedHashMap<>();

  public Trial(EffectivePolicy policy, UsualAnswers usual) {
    this.policy = policy;
    this.completed = new Completed(policy.vocabulary(), usual);
    policy
        .questions()
        .forEach(
            q -> {
              Decider.of(policy, q.name()).ifPresent(d -> deciders.put(q.name(), d));
              compiled.put(q.name(), CompiledQuestion.of(policy, q));
            });
  }

  /** The same, for whoever must not know what a finding usually is. */
  public static Trial of(EffectivePolicy policy, VocabularyFile words) {
    return new Trial(policy, words.usual());
  }

  /** Hears how far a run has come. */
  @FunctionalInterface
  public interface Progress {
    void done(int cases, int of);
  }

  /** The findings that a worked case really asks about, its usual rest filled in. */
  public Findings findings(WorkedCase worked) {
    return derived(worked).match(Derived::findings, broken -> worked.findings());
  }

  /**
   * What a case states, what its record yields, and the usual rest. The rest is filled in around
   * the record, as what hangs on it can be told only where it is known, and never in its place.
   */
  private Loaded<Derived> derived(WorkedCase worked) {
    Deriving deriving = Deriving.of(policy);
    return deriving
        .derive(worked.findings(), worked.record())
        .match(
            first ->
                deriving
                    .derive(filled(worked, worked.findings(), first), worked.record())
                    .match(d -> Loaded.good(withRest(worked, d)), Loaded::broken),
            Loaded::broken);
  }

  private Derived withRest(WorkedCase worked, Derived derived) {
    return new Derived(
        filled(worked, derived.findings(), derived),
        derived.speaksOf(),
        derived.notCounted(),
        derived.due());
  }

  private Findings filled(WorkedCase worked, Findings known, Derived derived) {
    return completed.findings(worked, known, derived.speaksOf());
  }

  /** Runs every case of a file and counts what of the policy they reach. */
  public Loaded<TrialReport> report(CaseFile file, LocalDate today, Progress progress) {
    if (!file.policy().equals(policy.name())) {
      return Loaded.broken(anotherPolicy(file));
    }
    return run(file.cases(), today, progress)
        .match(
            results ->
                Loaded.good(
                    new TrialReport(
                        policy.header(), results, Coverage.of(policy, compiled.values(), results))),
            Loaded::broken);
  }

  private Diagnostic anotherPolicy(CaseFile file) {
    return Diagnostic.error(
            DiagnosticCode.OTHER_POLICY,
            file.of().span(),
            "these are cases of `" + file.policy() + "`, and the policy is `" + policy.name() + "`")
        .help("write cases-of: " + policy.name() + ", or try the policy that is meant");
  }

  public Loaded<List<TrialResult>> run(List<WorkedCase> cases, LocalDate today) {
    return run(cases, today, (done, of) -> {});
  }

  /**
   * Runs every case; a case that asks a question the policy does not answer, or names a rule that
   * it does not have, is an error, never a skip.
   */
  private Loaded<List<TrialResult>> run(
      List<WorkedCase> cases, LocalDate today, Progress progress) {
    Problems problems = new Problems();
    List<TrialResult> results = new ArrayList<>();
    for (WorkedCase worked : cases) {
      Decider decider = deciders.get(worked.question());
      if (decider == null) {
        problems.add(noSuchQuestion(worked));
      } else {
        knowsItsRules(worked, problems);
        Loaded<Derived> derived = derived(worked);
        problems.addAll(derived.diagnostics());
        derived
            .match(Optional::of, broken -> Optional.<Derived>empty())
            .ifPresent(d -> results.add(result(worked, decider, d, today)));
      }
      progress.done(results.size(), cases.size());
    }
    return problems.conclude(() -> List.copyOf(results));
  }

  /** How the answer to one case comes about. */
  public Loaded<Explanation> explain(WorkedCase worked, LocalDate today) {
    return run(List.of(worked), today)
        .match(
            results ->
                Loaded.good(
                    Explanation.of(
                        Objects.requireNonNull(compiled.get(worked.question())),
                        findings(worked),
                        derived(worked).match(Derived::speaksOf, broken -> Set.of()),
                        results.get(0))),
            Loaded::broken);
  }

  private TrialResult result(WorkedCase worked, Decider decider, Derived derived, LocalDate today) {
    Decision decision =
        decider.decide(derived.findings(), today).alongside(derived.notCounted(), derived.due());
    return new TrialResult(worked, decision, Differences.between(worked.expected(), decision));
  }

  private Diagnostic noSuchQuestion(WorkedCase worked) {
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_QUESTION,
            worked.place().span(),
            "`" + policy.name() + "` does not answer the question `" + worked.question() + "`")
        .help("it answers: " + String.join(", ", deciders.keySet().stream().sorted().toList()));
  }

  private void knowsItsRules(WorkedCase worked, Problems problems) {
    List<String> known = rules(worked.question());
    Stream.concat(worked.expected().rules().stream(), worked.expected().notRules().stream())
        .filter(rule -> !known.contains(rule))
        .forEach(rule -> problems.add(noSuchRule(worked, rule, known)));
  }

  private List<String> rules(String question) {
    return Objects.requireNonNull(compiled.get(question)).rules().stream()
        .map(r -> r.rule().name())
        .toList();
  }

  private static Diagnostic noSuchRule(WorkedCase worked, String rule, List<String> known) {
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_RULE,
            worked.place().span(),
            "no rule of the question `" + worked.question() + "` is called `" + rule + "`")
        .help(
            Suggestion.nearest(rule, known)
                .map(near -> "did you mean `" + near + "`?")
                .orElse("its rules: " + String.join(", ", known)));
  }
}
