package org.tidemark.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.model.Statement;
import org.tidemark.model.Value;
import org.tidemark.model.Worse;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.ReferenceEvaluator;

/**
 * The prover against plain enumeration, on generated policies. Both verdicts must occur for each
 * kind of claim, so that a prover that always says one of them fails here.
 */
class ProverAgainstReferenceTest {
  private static final int POLICIES = 60;

  @ParameterizedTest
  @ValueSource(longs = {10, 5_000})
  void everyClaimAgreesWithEnumeration(long firstSeed) {
    Map<Claim.Kind, Set<Boolean>> seen = new EnumMap<>(Claim.Kind.class);
    for (long seed = firstSeed; seed < firstSeed + POLICIES; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoAlike(seed, 4, 7);
      EffectivePolicy policy = two.get(1);
      Enumerated all = new Enumerated(policy, two.get(0));
      for (Proof proof : new Prover().prove(policy, Optional.of(two.get(0)))) {
        boolean expected = all.holds(proof.claim());
        assertEquals(expected, proof.verdict().proved(), "seed " + seed + ": " + proof);
        seen.computeIfAbsent(proof.claim().kind(), k -> new TreeSet<>()).add(expected);
      }
    }
    Set<Boolean> both = Set.of(true, false);
    for (Claim.Kind kind :
        List.of(
            Claim.Kind.NO_GAP,
            Claim.Kind.OUTCOME_REACHABLE,
            Claim.Kind.RULE_MATTERS,
            Claim.Kind.ALLOW_CAN_PROCEED,
            Claim.Kind.WORSE_NEVER_LOOSENS,
            Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
            Claim.Kind.ALWAYS,
            Claim.Kind.NEVER)) {
      assertEquals(both, seen.get(kind), kind + " is both proved and refuted by some policy");
    }
    assertTrue(seen.containsKey(Claim.Kind.NOTHING_KNOWN_NEVER_PROCEEDS));
  }

  /** Decides each claim by looking at every case. */
  private static final class Enumerated {
    private final EffectivePolicy policy;
    private final EffectiveQuestion use;
    private final EffectivePolicy floor;
    private final List<Map<String, Value>> cases;

    Enumerated(EffectivePolicy policy, EffectivePolicy floor) {
      this.policy = policy;
      this.use = policy.question("use").orElseThrow();
      this.floor = floor;
      this.cases = ReferenceEvaluator.everyCase(policy);
    }

    boolean holds(Claim claim) {
      String subject = claim.subject().orElse("");
      return switch (claim.kind()) {
        case NO_GAP -> cases.stream().noneMatch(c -> fired(c).isEmpty());
        case OUTCOME_REACHABLE -> cases.stream().anyMatch(c -> outcome(c).word().equals(subject));
        case RULE_MATTERS -> matters(use.rule(subject).orElseThrow());
        case ALLOW_CAN_PROCEED ->
            cases.stream().anyMatch(c -> outcome(c) == Outcome.PROCEED && hasForce(subject, c));
        case WORSE_NEVER_LOOSENS -> worseNeverLoosens(policy.vocabulary().require(subject));
        case NOTHING_KNOWN_NEVER_PROCEEDS ->
            cases.stream().anyMatch(c -> outcome(c) != Outcome.PROCEED);
        case NEVER_LOOSER_THAN_FLOOR ->
            cases.stream().noneMatch(c -> outcome(c).compareTo(floorOutcome(c)) < 0);
        case ALWAYS, NEVER -> holds(policy.statement(subject).orElseThrow());
        case LIST_NEVER_LOOSER -> policy.question("use").isPresent();
        case BARRED_NEVER_LOOSENS -> throw new AssertionError("generated policies bar nothing");
      };
    }

    private boolean holds(Statement statement) {
      List<Outcome> answers =
          cases.stream()
              .filter(c -> ReferenceEvaluator.holds(policy, statement.given(), c))
              .map(this::outcome)
              .toList();
      return !answers.isEmpty() && answers.stream().allMatch(o -> agrees(statement, o));
    }

    /** More cautious than what is always asked will do. */
    private static boolean agrees(Statement statement, Outcome answer) {
      if (statement.mode() == Statement.Mode.NEVER) {
        return answer != statement.answer();
      }
      return statement.answer() == Outcome.PROCEED
          ? answer == Outcome.PROCEED
          : answer.compareTo(statement.answer()) >= 0;
    }

    private Set<String> fired(Map<String, Value> c) {
      return ReferenceEvaluator.fired(policy, use, c);
    }

    private Outcome outcome(Map<String, Value> c) {
      return ReferenceEvaluator.outcome(policy, use, c);
    }

    private Outcome floorOutcome(Map<String, Value> c) {
      return ReferenceEvaluator.outcome(floor, floor.question("use").orElseThrow(), c);
    }

    private Outcome without(Rule rule, Map<String, Value> c) {
      List<Rule> others = use.rules().stream().filter(r -> !r.name().equals(rule.name())).toList();
      EffectiveQuestion fewer =
          new EffectiveQuestion(
              use.name(), use.asks(), use.words(), use.speaksOf(), use.open(), others);
      return ReferenceEvaluator.outcome(policy, fewer, c);
    }

    private boolean matters(Rule rule) {
      return cases.stream()
          .filter(c -> fired(c).contains(rule.name()))
          .anyMatch(c -> mattersIn(rule, c));
    }

    private boolean mattersIn(Rule rule, Map<String, Value> c) {
      return switch (rule.effect()) {
        case ESCALATE, HOLD -> true;
        case ALLOW, SET_ASIDE -> without(rule, c) != outcome(c);
        case NOT_YET ->
            outcome(c) == Outcome.HOLD
                && use.rules().stream()
                    .noneMatch(r -> r.effect() == Effect.HOLD && fired(c).contains(r.name()));
      };
    }

    private boolean hasForce(String allow, Map<String, Value> c) {
      Set<String> fired = fired(c);
      return fired.contains(allow)
          && use.rules().stream()
              .noneMatch(
                  r ->
                      r.effect() == Effect.SET_ASIDE
                          && fired.contains(r.name())
                          && r.which().contains(allow));
    }

    private boolean worseNeverLoosens(Finding finding) {
      Map<Map<String, Value>, List<Map<String, Value>>> alike = new HashMap<>();
      for (Map<String, Value> c : cases) {
        if (rank(finding, c.get(finding.name())).isPresent()) {
          Map<String, Value> rest = new HashMap<>(c);
          rest.remove(finding.name());
          alike.computeIfAbsent(rest, r -> new ArrayList<>()).add(c);
        }
      }
      return alike.values().stream().allMatch(group -> ordered(finding, group));
    }

    private boolean ordered(Finding finding, List<Map<String, Value>> group) {
      for (Map<String, Value> better : group) {
        for (Map<String, Value> worse : group) {
          int one = rank(finding, better.get(finding.name())).orElseThrow();
          int other = rank(finding, worse.get(finding.name())).orElseThrow();
          if (one < other && outcome(worse).compareTo(outcome(better)) < 0) {
            return false;
          }
        }
      }
      return true;
    }

    private static Optional<Integer> rank(
        Finding finding, @org.jspecify.annotations.Nullable Value value) {
      if (finding.worse() instanceof Worse.Ranked ranked && value instanceof Value.Word word) {
        int at = ranked.leastToMost().indexOf(word.name());
        return at < 0 ? Optional.empty() : Optional.of(at);
      }
      if (value instanceof Value.Amount amount && !(finding.worse() instanceof Worse.Neither)) {
        int tenths = amount.number().movePointRight(1).intValueExact();
        return Optional.of(finding.worse() instanceof Worse.Higher ? tenths : -tenths);
      }
      return Optional.empty();
    }
  }
}
