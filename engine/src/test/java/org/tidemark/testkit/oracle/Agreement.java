package org.tidemark.testkit.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Reason;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Verdict;

/**
 * Whether a prover and Z3 come to the same verdicts. Every case of the prover's must satisfy Z3's
 * formula, and every case of Z3's must be answered by the ordinary evaluator as Z3 says.
 */
public final class Agreement {
  private static final LocalDate ANY_DAY = LocalDate.of(2000, 1, 1);

  private final List<String> disagreements = new ArrayList<>();
  private final Map<Claim.Kind, Integer> proved = new EnumMap<>(Claim.Kind.class);
  private final Map<Claim.Kind, Integer> refuted = new EnumMap<>(Claim.Kind.class);
  private final Map<Asked, Decider> deciders = new LinkedHashMap<>();
  private int replayed;
  private int witnesses;
  private int diagrams;
  private int unsaid;

  private record Asked(EffectivePolicy policy, String question) {}

  /**
   * Compares what was proved of a policy with what Z3 says, and adds it to what was compared
   * before.
   *
   * @param policy the policy
   * @param floor the policy that it builds on, if there is one
   * @param proofs what a prover said
   */
  public Agreement compare(
      EffectivePolicy policy, Optional<EffectivePolicy> floor, List<Proof> proofs) {
    deciders.clear();
    List<Proof> searched = proofs.stream().filter(Agreement::isSearched).toList();
    Map<List<String>, Proof> left = new LinkedHashMap<>();
    searched.forEach(p -> left.put(key(p.claim()), p));
    if (left.size() != searched.size()) {
      disagreements.add("a claim was made twice");
    }
    for (EffectiveQuestion question : policy.questions()) {
      try (Z3Oracle oracle = new Z3Oracle(policy, floor, question)) {
        for (Sought sought : oracle.claims()) {
          String subject = sought.subject().orElse("");
          List<String> key = List.of(sought.kind().name(), question.name(), subject);
          compare(oracle, sought, key, Optional.ofNullable(left.remove(key)));
        }
      }
      diagrams(policy, new BddOracle(policy, floor, question), question.name(), proofs);
    }
    left.keySet().forEach(k -> disagreements.add(k + " is not known to Z3"));
    return this;
  }

  /** Lists are held against lists, and no case is looked for. */
  private static boolean isSearched(Proof proof) {
    return proof.claim().kind() != Claim.Kind.LIST_NEVER_LOOSER;
  }

  private static List<String> key(Claim claim) {
    return List.of(claim.kind().name(), claim.question(), claim.subject().orElse(""));
  }

  private void compare(Z3Oracle oracle, Sought sought, List<String> key, Optional<Proof> proof) {
    List<Shown> found = oracle.find(sought);
    found.forEach(this::replay);
    boolean spoken = sought.speaksOf().map(oracle::exists).orElse(true);
    boolean holds = spoken && found.isEmpty() != sought.mustExist();
    (holds ? proved : refuted).merge(sought.kind(), 1, Integer::sum);
    if (proof.isEmpty()) {
      mayGoUnsaid(sought, holds, key);
    } else if (proof.get().verdict() instanceof Verdict.Refuted no) {
      if (holds) {
        disagreements.add(key + " is refuted, and Z3 proves it");
      } else if (spoken && !sought.mustExist()) {
        witness(oracle, sought, key, no);
      }
    } else if (!(proof.get().verdict() instanceof Verdict.Proved)) {
      disagreements.add(key + " is undecided");
    } else if (!holds) {
      disagreements.add(key + " is proved, and Z3 refutes it with " + found);
    }
  }

  private void diagrams(
      EffectivePolicy policy, BddOracle oracle, String question, List<Proof> proofs) {
    for (Proof proof : proofs) {
      if (proof.claim().question().equals(question)) {
        Optional<Boolean> holds =
            switch (proof.claim().kind()) {
              case NO_GAP -> Optional.of(oracle.noGap());
              case NEVER_LOOSER_THAN_FLOOR -> oracle.neverLooserThanFloor();
              case ALWAYS, NEVER ->
                  proof.claim().subject().flatMap(policy::statement).map(oracle::holds);
              default -> Optional.empty();
            };
        holds.ifPresent(h -> diagram(proof, h));
      }
    }
  }

  private void diagram(Proof proof, boolean holds) {
    diagrams++;
    if (!(proof.verdict() instanceof Verdict.Undecided) && holds != proof.verdict().proved()) {
      disagreements.add(
          key(proof.claim())
              + (holds
                  ? " is refuted, and the diagrams prove it"
                  : " is proved, and the diagrams refute it"));
    }
  }

  /** A finding of which the rules tell no two ordered values apart needs no claim. */
  private void mayGoUnsaid(Sought sought, boolean holds, List<String> key) {
    unsaid++;
    if (!holds || sought.kind() != Claim.Kind.WORSE_NEVER_LOOSENS) {
      disagreements.add(key + " is not claimed");
    }
  }

  private void witness(Z3Oracle oracle, Sought sought, List<String> key, Verdict.Refuted no) {
    witnesses++;
    if (!oracle.admits(sought, no.witness().findings())) {
      disagreements.add(key + ": Z3 does not accept the case " + no.witness());
    }
  }

  private void replay(Shown shown) {
    replayed++;
    Decision decision =
        deciders
            .computeIfAbsent(
                new Asked(shown.policy(), shown.question()),
                k -> Decider.of(shown.policy(), shown.question()).orElseThrow())
            .decide(shown.findings(), ANY_DAY);
    TreeSet<String> fired = new TreeSet<>(decision.reasons().stream().map(Reason::rule).toList());
    if (decision.outcome() != shown.outcome() || !fired.equals(shown.fired())) {
      disagreements.add(
          shown + " is answered with " + decision.outcome() + " by the rules " + fired);
    }
  }

  /** What they do not agree on, one a line; empty when all is well. */
  public String disagreements() {
    return String.join("\n", disagreements);
  }

  /** How many claims of a kind hold, by Z3. */
  public int proved(Claim.Kind kind) {
    return proved.getOrDefault(kind, 0);
  }

  /** How many claims of a kind do not hold, by Z3. */
  public int refuted(Claim.Kind kind) {
    return refuted.getOrDefault(kind, 0);
  }

  /** How many claims were compared. */
  public int claims() {
    return sum(proved) + sum(refuted);
  }

  private static int sum(Map<Claim.Kind, Integer> counts) {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many of Z3's cases the ordinary evaluator answered. */
  public int replayed() {
    return replayed;
  }

  /** How many of the prover's cases were put to Z3. */
  public int witnesses() {
    return witnesses;
  }

  /** How many claims the prover had no need to make, or did not make. */
  public int unsaid() {
    return unsaid;
  }

  /** How many claims the decision diagrams decided. */
  public int diagrams() {
    return diagrams;
  }
}
