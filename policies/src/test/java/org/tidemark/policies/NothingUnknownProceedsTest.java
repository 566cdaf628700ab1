package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.trial.Trial;
import org.tidemark.trial.WorkedCase;

/**
 * On every worked case of every policy: what is not known never makes an answer proceed. One
 * finding after another is taken away, with whatever hangs on it, and several at once by chance.
 */
class NothingUnknownProceedsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final long SEED = 20261125L;
  private static final int DRAWS = 4;

  private final Map<String, Decider> deciders = new HashMap<>();

  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL, Shipped.PORTSMOUTH, Shipped.NORDJYLLAND})
  void takingFindingsAwayNeverMakesACaseProceed(String folder) {
    EffectivePolicy policy = Shipped.policy(folder);
    Trial trial = new Trial(policy, Shipped.words().usual());
    Random random = new Random(SEED);
    List<WorkedCase> cases = Shipped.cases(folder).cases();
    assertTrue(cases.size() > 10, folder);
    for (WorkedCase worked : cases) {
      Findings full = trial.findings(worked);
      boolean proceeds = worked.expect() == Outcome.PROCEED;
      for (int i = 0; i < DRAWS; i++) {
        Decision fewer = decide(policy, worked, someOf(full, random, policy));
        assertTrue(proceeds || fewer.outcome() != Outcome.PROCEED, worked::name);
      }
      if (proceeds) {
        full.entries().keySet().forEach(f -> oneAway(policy, worked, full, f));
      }
    }
  }

  /**
   * Every subset of what a case states, taken away: a case that does not proceed never does so with
   * less known.
   */
  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL, Shipped.PORTSMOUTH, Shipped.NORDJYLLAND})
  void noSubsetOfWhatACaseStatesProceedsUnlessEveryCompletionDoes(String folder) {
    EffectivePolicy policy = Shipped.policy(folder);
    Trial trial = new Trial(policy, Shipped.words().usual());
    Random random = new Random(SEED);
    for (WorkedCase worked : Shipped.cases(folder).cases()) {
      Findings full = trial.findings(worked);
      List<String> stated = List.copyOf(worked.findings().entries().keySet());
      for (int subset = 1; subset < 1 << stated.size(); subset++) {
        Findings fewer = without(full, stated, subset, policy);
        if (decide(policy, worked, fewer).outcome() == Outcome.PROCEED) {
          assertEquals(Outcome.PROCEED, worked.expect(), worked.name() + " without " + subset);
          Findings completed = completed(fewer, stated, policy, random);
          Decision decision = decide(policy, worked, completed);
          assertEquals(Outcome.PROCEED, decision.outcome(), worked.name() + " with " + completed);
        }
      }
    }
  }

  private static Findings without(
      Findings full, List<String> names, int subset, EffectivePolicy policy) {
    Findings left = full;
    for (int i = 0; i < names.size(); i++) {
      left = (subset >> i & 1) == 1 ? without(left, names.get(i), policy) : left;
    }
    return left;
  }

  /** What was taken away, at some other value that it may have. */
  private static Findings completed(
      Findings fewer, List<String> names, EffectivePolicy policy, Random random) {
    Findings more = fewer;
    for (Finding finding : policy.vocabulary().findings()) {
      boolean missing = names.contains(finding.name()) && more.entry(finding.name()).isEmpty();
      if (missing && exists(finding, more)) {
        List<Seen> values = values(finding).toList();
        more = more.with(finding.name(), entry(values.get(random.nextInt(values.size()))));
      }
    }
    return more;
  }

  private static boolean exists(Finding finding, Findings known) {
    return finding.applies().stream()
        .allMatch(
            p ->
                known
                    .entry(p.finding())
                    .map(e -> p.options().containsAll(e.seen().options()))
                    .orElse(false));
  }

  /** Without one finding the case still proceeds only where every value of it proceeds. */
  private void oneAway(EffectivePolicy policy, WorkedCase worked, Findings full, String name) {
    Findings without = without(full, name, policy);
    Decision decision = decide(policy, worked, without);
    if (decision.outcome() != Outcome.PROCEED) {
      assertEquals(Outcome.HOLD, decision.outcome(), worked.name() + " without " + name);
      return;
    }
    Finding finding = policy.vocabulary().require(name);
    values(finding)
        .forEach(
            seen ->
                assertEquals(
                    Outcome.PROCEED,
                    decide(policy, worked, without.with(name, entry(seen))).outcome(),
                    worked.name() + ": " + name + " " + seen));
  }

  private static Findings.Entry entry(Seen seen) {
    return new Findings.Entry(seen, Place.at(nowhere()));
  }

  private static Span nowhere() {
    return SourceText.of("test", " ").beginning();
  }

  private static Stream<Seen> values(Finding finding) {
    Stream<Seen> options = finding.domain().options().stream().map(o -> Seen.option(o.name()));
    return finding.domain() instanceof Domain.Measure m
        ? Stream.concat(options, Stream.of(Seen.number(m.lowest()), Seen.number(m.highest())))
        : options;
  }

  private Decision decide(EffectivePolicy policy, WorkedCase worked, Findings findings) {
    return deciders
        .computeIfAbsent(
            worked.question(), q -> Decider.of(policy, q).orElseThrow(AssertionError::new))
        .decide(findings, TODAY);
  }

  private static Findings someOf(Findings full, Random random, EffectivePolicy policy) {
    List<String> names = new ArrayList<>(full.entries().keySet());
    Collections.shuffle(names, random);
    Findings left = full;
    for (String name : names.subList(0, 1 + random.nextInt(names.size()))) {
      left = without(left, name, policy);
    }
    return left;
  }

  /** Without a finding, and without the ones that hang on it. */
  private static Findings without(Findings findings, String name, EffectivePolicy policy) {
    Findings left = findings.without(name);
    for (Finding finding : policy.vocabulary().findings()) {
      boolean hangs = finding.applies().stream().anyMatch(p -> p.finding().equals(name));
      if (hangs && left.entry(finding.name()).isPresent()) {
        left = without(left, finding.name(), policy);
      }
    }
    return left;
  }
}
