package org.tidemark.prove;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Kind;
import org.tidemark.decide.Obstacles;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Effect;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;

/** The claims about one question that look at one case at a time. */
final class QuestionClaims {
  static final Witness NO_CASE =
      new Witness(Findings.NONE, List.of(), List.of("There is no such case."));

  private final CompiledQuestion compiled;
  private final String question;
  private final Replay replay;
  private final int budget;
  private final boolean answers;
  private final long[] everything;
  private final Obstacles impossible;
  private final Obstacles notEscalated;
  private final Obstacles notStopped;
  private final Obstacles notAllowed;

  QuestionClaims(EffectivePolicy policy, EffectiveQuestion question, int budget) {
    this.compiled = CompiledQuestion.of(policy, question);
    this.question = question.name();
    this.replay = new Replay(policy, question.name(), compiled.space());
    this.budget = budget;
    // A floor that leaves something to the hospital never proceeds itself, so nothing is claimed
    // about when it would.
    this.answers = question.open().isEmpty();
    this.everything = compiled.withSwitches(compiled.space().everything());
    this.impossible = Obstacles.of(compiled.impossible());
    this.notEscalated = impossible.and(compiled.boxes(Effect.ESCALATE));
    this.notStopped = notEscalated.and(compiled.boxes(Effect.HOLD));
    this.notAllowed = notStopped.and(compiled.force());
  }

  static List<Box> join(List<Box> some, List<Box> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  List<Proof> prove() {
    List<Proof> proofs = new ArrayList<>();
    proofs.add(noGap());
    for (Outcome outcome : Outcome.values()) {
      if (answers || outcome != Outcome.PROCEED) {
        proofs.add(reachable(outcome));
      }
    }
    proofs.add(nothingKnown());
    for (CompiledRule rule : compiled.rules()) {
      if (compiled.policy().isBorrowed(compiled.question(), rule.rule().name())) {
        continue; // said of it where it is at home
      }
      proofs.add(matters(rule));
      if (answers && rule.has(Effect.ALLOW)) {
        proofs.add(canProceed(rule));
      }
    }
    return proofs;
  }

  private Hunt hunt(Set<Outcome> expected) {
    return new Hunt(budget, point -> witness(point, replay.of(point, expected)));
  }

  private Witness witness(long[] point, Decision decision) {
    return new Witness(
        replay.findings(point), replay.words(point), List.of(replay.answer(decision)));
  }

  private Claim claim(Claim.Kind kind, Optional<String> subject, String sentence) {
    return new Claim(kind, question, subject, sentence);
  }

  Proof noGap() {
    Obstacles all =
        notAllowed.and(join(compiled.boxes(Effect.NOT_YET), compiled.boxes(Effect.SET_ASIDE)));
    Verdict verdict =
        hunt(EnumSet.of(Outcome.HOLD)).look(everything, List.of(), all).noneMayBeFound();
    return new Proof(
        claim(
            Claim.Kind.NO_GAP,
            Optional.empty(),
            "Every case of `" + question + "` is spoken of by a rule."),
        verdict);
  }

  private Proof reachable(Outcome outcome) {
    Hunt hunt = hunt(EnumSet.of(outcome));
    switch (outcome) {
      case PROCEED -> compiled.force().forEach(b -> hunt.look(everything, List.of(b), notStopped));
      case HOLD -> {
        compiled.boxes(Effect.HOLD).forEach(b -> hunt.look(everything, List.of(b), notEscalated));
        hunt.look(everything, List.of(), notEscalated.and(compiled.force()));
      }
      case ESCALATE ->
          compiled
              .boxes(Effect.ESCALATE)
              .forEach(b -> hunt.look(everything, List.of(b), impossible));
    }
    String sentence = "Some case of `" + question + "` is answered with " + outcome.word() + ".";
    return new Proof(
        claim(Claim.Kind.OUTCOME_REACHABLE, Optional.of(outcome.word()), sentence),
        hunt.oneMustBeFound(NO_CASE));
  }

  /** Asked of nothing at all, the evaluator itself must hold. */
  private Proof nothingKnown() {
    Decision decision = replay.answerToNothing();
    Claim claim =
        claim(
            Claim.Kind.NOTHING_KNOWN_NEVER_PROCEEDS,
            Optional.empty(),
            "With nothing known, `" + question + "` never proceeds.");
    boolean holds = decision.outcome() != Outcome.PROCEED && decision.kind() != Kind.UNDECIDED;
    return new Proof(
        claim,
        holds
            ? new Verdict.Proved()
            : new Verdict.Refuted(
                new Witness(Findings.NONE, List.of(), List.of(replay.answer(decision)))));
  }

  private Proof canProceed(CompiledRule allow) {
    Hunt hunt = hunt(EnumSet.of(Outcome.PROCEED));
    compiled.force(allow.rule().name()).forEach(b -> hunt.look(everything, List.of(b), notStopped));
    return new Proof(
        claim(
            Claim.Kind.ALLOW_CAN_PROCEED,
            Optional.of(allow.rule().name()),
            "Some case proceeds by the rule `" + allow.rule().name() + "`."),
        hunt.oneMustBeFound(NO_CASE));
  }

  /**
   * A rule matters where taking it out would change what is said. A stop says what it has to say
   * whenever it fires; a way to proceed, and what takes its force, must make a difference to the
   * answer.
   */
  private Proof matters(CompiledRule rule) {
    Hunt hunt = new Hunt(budget, point -> witness(point, replay.of(point)));
    switch (rule.rule().effect()) {
      case ESCALATE, HOLD -> canFire(hunt, rule);
      case ALLOW -> difference(hunt, rule, this::allowMatters);
      case SET_ASIDE -> difference(hunt, rule, this::setAsideMatters);
      case NOT_YET -> difference(hunt, rule, this::speaksWhenNothingAllows);
    }
    return new Proof(
        claim(
            Claim.Kind.RULE_MATTERS,
            Optional.of(rule.rule().name()),
            "The rule `" + rule.rule().name() + "` changes what is said in some case."),
        hunt.oneMustBeFound(NO_CASE));
  }

  private void canFire(Hunt hunt, CompiledRule rule) {
    rule.boxes().forEach(b -> hunt.look(everything, List.of(b), impossible));
  }

  private void difference(Hunt hunt, CompiledRule rule, BiConsumer<Hunt, CompiledRule> look) {
    if (answers) {
      look.accept(hunt, rule);
    } else {
      canFire(hunt, rule);
    }
  }

  private void allowMatters(Hunt hunt, CompiledRule allow) {
    List<Box> others =
        compiled.rules().stream()
            .filter(r -> r.has(Effect.ALLOW) && !r.rule().name().equals(allow.rule().name()))
            .flatMap(r -> compiled.force(r.rule().name()).stream())
            .toList();
    Obstacles dodge = notStopped.and(others);
    compiled.force(allow.rule().name()).forEach(b -> hunt.look(everything, List.of(b), dodge));
  }

  private void speaksWhenNothingAllows(Hunt hunt, CompiledRule rule) {
    rule.boxes().forEach(b -> hunt.look(everything, List.of(b), notAllowed));
  }

  private void setAsideMatters(Hunt hunt, CompiledRule setAside) {
    for (CompiledRule allow : compiled.rules()) {
      if (allow.has(Effect.ALLOW) && setAside.rule().which().contains(allow.rule().name())) {
        for (Box open : compiled.forceButFor(allow, setAside.rule().name())) {
          setAside.boxes().forEach(b -> hunt.look(everything, List.of(open, b), notAllowed));
        }
      }
    }
  }
}
