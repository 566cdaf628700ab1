package org.tidemark.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Effect;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;

/**
 * Answers one question of one policy. The answer is right for every possibility that the findings
 * leave open: it proceeds only when every one of them proceeds. Immutable; one decider may serve
 * many threads.
 */
public final class Decider {
  /** Far more steps than any shipped policy takes, and few enough to end at once. */
  static final int BUDGET = 20_000;

  private final CompiledQuestion compiled;
  private final Questions questions;
  private final Points points;
  private final Wording wording;
  private final int budget;
  private final Means means;
  private final Misreading misreading;
  private @Nullable List<Relevance> relevance;

  private Decider(CompiledQuestion compiled, Misreading misreading, int budget) {
    this.compiled = compiled;
    this.misreading = misreading;
    this.questions = new Questions(compiled, budget);
    this.points = new Points(compiled);
    this.wording = new Wording(compiled);
    this.budget = budget;
    this.means = new Means(compiled, points, questions.layout(), Limits.of(budget), misreading);
  }

  /** The decider of a question, if the policy answers that question. */
  public static Optional<Decider> of(EffectivePolicy policy, String question) {
    return of(policy, question, BUDGET);
  }

  static Optional<Decider> of(EffectivePolicy policy, String question, int budget) {
    Optional<EffectiveQuestion> found = policy.question(question);
    return found.map(
        q -> new Decider(CompiledQuestion.of(policy, q), Misreading.of(policy), budget));
  }

  /**
   * The decider of a question for findings that are so, and not only read: none of them counts as
   * more than it is. For the cases of a proof.
   */
  public static Optional<Decider> ofWhatIsSo(EffectivePolicy policy, String question) {
    Optional<EffectiveQuestion> found = policy.question(question);
    return found.map(q -> new Decider(CompiledQuestion.of(policy, q), Misreading.NONE, BUDGET));
  }

  /**
   * Answers.
   *
   * @param entered what is known; whatever is not there may be anything
   * @param today the day, for the review date
   */
  public Decision decide(Findings entered, LocalDate today) {
    Findings findings = misreading.counted(entered);
    long[] region = compiled.space().region(findings);
    compiled.space().settle(region);
    Outlook outlook = outlook(region);
    Possible possible = outlook.possible();
    Kind kind = kind(outlook);
    Outcome outcome = outcome(kind);
    List<Need> ask =
        kind == Kind.UNSETTLED || kind == Kind.UNDECIDED ? ask(region, possible) : List.of();
    Decision decision =
        new Answer(compiled, wording, findings, region, outlook.firing())
            .put(
                outcome,
                kind,
                possible.outcomes(),
                ask,
                misreading.said(entered, compiled.space()),
                today);
    String hold = compiled.question().word(Outcome.HOLD);
    return Ended.by(today, compiled.policy()).map(e -> e.holds(decision, hold)).orElse(decision);
  }

  /** What was entered, as it counts: a reading that may be off counts as all that it may be. */
  public Findings counted(Findings entered) {
    return misreading.counted(entered);
  }

  /** Where every finding is known, one pass over the rules is enough; else a search is needed. */
  private Outlook outlook(long[] region) {
    return Points.isCase(region) && points.canOccur(region)
        ? points.outlook(region)
        : questions.outlook(region);
  }

  /**
   * For an unfinished case: the fewest findings that settle it whatever they are, and for each
   * outcome still possible the fewest findings, among those not yet known for certain, that settle
   * it so, with values that do. Nothing is left to find for a settled case, and there is no way to
   * proceed by what has ended. What is to be found of a reading that may be off is a reading: all
   * that it counts as does what is said of it.
   */
  public Routes routes(Findings entered, LocalDate today) {
    Routes routes = routes(entered);
    if (Ended.by(today, compiled.policy()).isEmpty()) {
      return routes;
    }
    Set<Outcome> left = Ended.withoutProceeding(possible(misreading.counted(entered)).outcomes());
    return new Routes(
        left.equals(Set.of(Outcome.HOLD)) ? new ToAsk.Found(List.of()) : routes.fewest(),
        routes.ways().stream()
            .filter(w -> left.size() > 1 && w.outcome() != Outcome.PROCEED)
            .toList());
  }

  Routes routes(Findings entered) {
    Findings findings = misreading.counted(entered);
    Possible possible = possible(findings);
    if (!possible.settled() || possible.outcomes().isEmpty()) {
      return new Routes(new ToAsk.NotWorkedOut(), List.of());
    }
    return possible.outcomes().size() > 1
        ? new Settling(means).routes(findings, possible.outcomes())
        : Routes.SETTLED;
  }

  private Possible possible(Findings findings) {
    return questions.possible(compiled.space().region(findings));
  }

  /**
   * For a settled case: the fewest of the findings entered that force the answer, whatever all else
   * is. None exist for a case that is not settled.
   */
  public Least forcing(Findings entered) {
    Findings findings = misreading.counted(entered);
    Possible possible = possible(findings);
    if (!possible.settled() || possible.outcomes().isEmpty()) {
      return new Least.NotWorkedOut();
    }
    return possible.outcomes().size() == 1
        ? new Forcing(means, entered).of(findings, possible.outcomes().iterator().next())
        : new Least.NoneExists();
  }

  /**
   * For a hold: the fewest findings that would have to be found, or found anew, for it to proceed
   * for certain. None exist for any other answer: an escalation is never argued with.
   */
  public Least change(Findings entered) {
    Findings findings = misreading.counted(entered);
    Possible possible = possible(findings);
    if (!possible.settled() || possible.outcomes().isEmpty()) {
      return new Least.NotWorkedOut();
    }
    boolean held = possible.outcomes().size() > 1 || possible.outcomes().contains(Outcome.HOLD);
    return held ? new Change(means).toProceed(findings) : new Least.NoneExists();
  }

  /**
   * What lies behind an answer that this decider gave to these findings on this day. What has ended
   * holds by itself: no finding forces that, and none would let it proceed.
   */
  public Grounds grounds(Findings findings, Decision decision, LocalDate today) {
    boolean hold = decision.settled() && decision.outcome() == Outcome.HOLD;
    if (hold && Ended.by(today, compiled.policy()).isPresent()) {
      return new Grounds(Optional.empty(), Optional.of(new Least.NoneExists()), Optional.empty());
    }
    return new Grounds(
        decision.settled() ? Optional.of(forcing(findings)) : Optional.empty(),
        hold ? Optional.of(change(findings)) : Optional.empty(),
        Optional.empty());
  }

  /** Worked out once, and only when something is open: a settled answer asks nothing. */
  private synchronized List<Relevance> relevance() {
    List<Relevance> all = relevance;
    if (all == null) {
      all = Relevance.all(compiled, points);
      relevance = all;
    }
    return all;
  }

  private static Kind kind(Outlook outlook) {
    Possible possible = outlook.possible();
    if (!possible.settled() || possible.states().isEmpty()) {
      return Kind.UNDECIDED;
    }
    Set<Outcome> outcomes = possible.outcomes();
    if (outcomes.size() > 1) {
      return Kind.UNSETTLED;
    }
    if (outcomes.contains(Outcome.PROCEED)) {
      return Kind.PROCEEDS;
    }
    return outcomes.contains(Outcome.ESCALATE) ? Kind.ESCALATES : hold(outlook);
  }

  /**
   * Of several kinds of hold, the one that is true of every possibility: only a rule that surely
   * fires is said to hold.
   */
  private static Kind hold(Outlook outlook) {
    if (outlook.possible().only(State.HELD) || outlook.firing().any(Effect.HOLD)) {
      return Kind.HELD;
    }
    return outlook.possible().only(State.NOT_COVERED) ? Kind.NOT_COVERED : Kind.NOT_YET;
  }

  private static Outcome outcome(Kind kind) {
    return switch (kind) {
      case PROCEEDS -> Outcome.PROCEED;
      case ESCALATES -> Outcome.ESCALATE;
      case HELD, UNSETTLED, NOT_YET, NOT_COVERED, UNDECIDED -> Outcome.HOLD;
    };
  }

  private List<Need> ask(long[] region, Possible possible) {
    Steps steps = new Steps(budget);
    return relevance().stream()
        .filter(r -> r.matters(region, possible, steps))
        .map(r -> Needs.of(compiled.space().cells(r.finding()).finding()))
        .toList();
  }
}
