package org.tidemark.testkit.oracle;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Barred;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Outcome;
import org.tidemark.model.Statement;
import org.tidemark.model.Worse;
import org.tidemark.prove.Claim;

/** Every claim about one question of a policy, as a formula. */
final class Z3Claims {
  private final Context context;
  private final EffectivePolicy policy;
  private final EffectiveQuestion question;
  private final Optional<EffectivePolicy> floor;
  private final Set<String> own;
  private final Set<String> every;
  private final Z3Logic logic;
  private final Told<BoolExpr> told;
  private final Optional<Told<BoolExpr>> below;

  Z3Claims(
      Context context,
      EffectivePolicy policy,
      Optional<EffectivePolicy> floor,
      EffectiveQuestion question) {
    this.context = context;
    this.policy = policy;
    this.question = question;
    this.floor = floor.filter(f -> f.question(question.name()).isPresent());
    List<Spoken> mine = Spoken.of(policy, question);
    this.own = mentions(policy, mine);
    this.every = new LinkedHashSet<>(own);
    this.floor.ifPresent(f -> every.addAll(mentions(f, floorRules(f))));
    every.addAll(Mentions.of(policy, statements().stream().map(Statement::given)));
    this.logic = new Z3Logic(context, policy.vocabulary(), every, "");
    this.told = new Told<>(logic, policy, mine);
    this.below = this.floor.map(f -> new Told<>(logic, f, floorRules(f)));
  }

  private List<Spoken> floorRules(EffectivePolicy below) {
    return Spoken.of(below, below.question(question.name()).orElseThrow());
  }

  private static Set<String> mentions(EffectivePolicy policy, List<Spoken> rules) {
    return Mentions.of(policy, rules.stream().map(Spoken::given));
  }

  String question() {
    return question.name();
  }

  Z3Logic logic() {
    return logic;
  }

  Told<BoolExpr> told() {
    return told;
  }

  Optional<Told<BoolExpr>> below() {
    return below;
  }

  /** The unknowns of a second case: one finding, when all others are as in the first. */
  Z3Logic second(String finding) {
    return new Z3Logic(context, policy.vocabulary(), List.of(finding), "'");
  }

  List<Sought> all() {
    List<Sought> all = new ArrayList<>();
    all.add(gap());
    all.add(
        one(
            Claim.Kind.NOTHING_KNOWN_NEVER_PROCEEDS,
            Optional.empty(),
            true,
            logic.not(told.is(Outcome.PROCEED))));
    for (Outcome outcome : Outcome.values()) {
      if (outcome != Outcome.PROCEED || answers()) {
        all.add(
            one(Claim.Kind.OUTCOME_REACHABLE, Optional.of(outcome.word()), true, told.is(outcome)));
      }
    }
    told.rules().stream()
        .filter(r -> !policy.isBorrowed(question, r.name()))
        .forEach(r -> rule(r, all));
    own.forEach(f -> pairs(policy.vocabulary().require(f), all));
    floor().ifPresent(all::add);
    statements().forEach(s -> all.add(statement(s)));
    return all;
  }

  /** A case of which no rule speaks. */
  Sought gap() {
    return one(Claim.Kind.NO_GAP, Optional.empty(), false, told.silent());
  }

  /** A case that is answered more loosely than by the floor. */
  Optional<Sought> floor() {
    return below.map(this::floor);
  }

  private List<Statement> statements() {
    return policy.statements().stream().filter(s -> s.question().equals(question.name())).toList();
  }

  /** Some case is as the statement says, and none of those is answered otherwise. */
  private Sought statement(Statement statement) {
    Set<String> looksAt = new LinkedHashSet<>(own);
    looksAt.addAll(Mentions.of(policy, Stream.of(statement.given())));
    BoolExpr given = statement.given().accept(new ConditionTeller<>(logic, policy)).yes();
    BoolExpr spoken = logic.all(List.of(Told.laws(logic, policy, looksAt), given));
    BoolExpr belied = logic.any(Stated.rulesOut(statement).stream().map(o -> told.is(o)).toList());
    return new Sought(
        Stated.kind(statement),
        Optional.of(statement.name()),
        false,
        Optional.of(spoken),
        logic.all(List.of(spoken, belied)),
        looksAt,
        Optional.empty());
  }

  private boolean answers() {
    return question.open().isEmpty();
  }

  private Sought one(
      Claim.Kind kind, Optional<String> subject, boolean mustExist, BoolExpr formula) {
    BoolExpr lawful = logic.all(List.of(Told.laws(logic, policy, own), formula));
    return new Sought(kind, subject, mustExist, Optional.empty(), lawful, own, Optional.empty());
  }

  private void rule(Spoken rule, List<Sought> all) {
    Optional<String> name = Optional.of(rule.name());
    all.add(one(Claim.Kind.RULE_MATTERS, name, true, matters(rule)));
    if (answers() && rule.effect() == Effect.ALLOW) {
      BoolExpr proceeds = logic.all(List.of(told.is(Outcome.PROCEED), told.hasForce(rule.name())));
      all.add(one(Claim.Kind.ALLOW_CAN_PROCEED, name, true, proceeds));
    }
  }

  private BoolExpr matters(Spoken rule) {
    BoolExpr fires = told.fires(rule.name());
    if (!answers() || rule.effect() == Effect.ESCALATE || rule.effect() == Effect.HOLD) {
      return fires;
    }
    if (rule.effect() == Effect.NOT_YET) {
      return logic.all(List.of(fires, told.nothingStopsOrAllows()));
    }
    return changes(told.only(r -> !r.equals(rule)));
  }

  /** The outcome is another one. */
  private BoolExpr changes(Told<BoolExpr> without) {
    return logic.any(
        Stream.of(Outcome.values())
            .map(o -> logic.all(List.of(told.is(o), logic.not(without.is(o)))))
            .toList());
  }

  /** What the floor leaves to the hospital is no answer of its own. */
  private Sought floor(Told<BoolExpr> below) {
    BoolExpr looser = looser(told::is, below.only(r -> !r.silence())::is);
    BoolExpr lawful = logic.all(List.of(Told.laws(logic, policy, every), looser));
    return new Sought(
        Claim.Kind.NEVER_LOOSER_THAN_FLOOR,
        floor.map(EffectivePolicy::name),
        false,
        Optional.empty(),
        lawful,
        every,
        Optional.empty());
  }

  /** What the one answers is less cautious than what the other does. */
  private BoolExpr looser(Function<Outcome, BoolExpr> one, Function<Outcome, BoolExpr> other) {
    List<BoolExpr> ways = new ArrayList<>();
    for (Outcome loose : Outcome.values()) {
      for (Outcome cautious : Outcome.values()) {
        if (loose.compareTo(cautious) < 0) {
          ways.add(logic.all(List.of(one.apply(loose), other.apply(cautious))));
        }
      }
    }
    return logic.any(ways);
  }

  private void pairs(Finding finding, List<Sought> all) {
    Z3Logic second = second(finding.name());
    if (!(finding.worse() instanceof Worse.Neither)) {
      all.add(pair(Claim.Kind.WORSE_NEVER_LOOSENS, finding, second, worse(finding, second)));
    }
    policy.barred().stream()
        .filter(b -> b.finding().equals(finding.name()))
        .forEach(
            b -> {
              BoolExpr counts = badOnlyInSecond(b, second);
              all.add(pair(Claim.Kind.BARRED_NEVER_LOOSENS, finding, second, counts));
            });
  }

  /** Two cases alike but for the finding, the second less cautious than the first. */
  private Sought pair(Claim.Kind kind, Finding finding, Z3Logic second, BoolExpr differ) {
    BoolExpr laws = Told.laws(logic, policy, own);
    BoolExpr looser = looser(o -> logic.saidOf(second, told.is(o)), told::is);
    return new Sought(
        kind,
        Optional.of(finding.name()),
        false,
        Optional.empty(),
        logic.all(List.of(laws, logic.saidOf(second, laws), second.domains(), differ, looser)),
        own,
        Optional.of(finding.name()));
  }

  private BoolExpr badOnlyInSecond(Barred barred, Z3Logic second) {
    String finding = barred.finding();
    return logic.all(
        List.of(
            logic.not(logic.absent(finding)),
            logic.not(logic.word(finding, barred.options())),
            second.word(finding, barred.options())));
  }

  private BoolExpr worse(Finding finding, Z3Logic second) {
    String name = finding.name();
    if (finding.worse() instanceof Worse.Ranked ranked) {
      return rankedLower(name, ranked.leastToMost(), second);
    }
    BoolExpr further =
        finding.worse() instanceof Worse.Higher
            ? logic.fewerSteps(name, second)
            : second.fewerSteps(name, logic);
    return logic.all(
        List.of(
            logic.number(name),
            second.number(name),
            logic.not(leftOpen(name, logic)),
            logic.not(leftOpen(name, second)),
            further));
  }

  private BoolExpr rankedLower(String name, List<String> leastToMost, Z3Logic second) {
    List<BoolExpr> ways = new ArrayList<>();
    for (int i = 0; i + 1 < leastToMost.size(); i++) {
      List<String> worse = leastToMost.subList(i + 1, leastToMost.size());
      ways.add(
          logic.all(
              List.of(logic.word(name, List.of(leastToMost.get(i))), second.word(name, worse))));
    }
    return logic.any(ways);
  }

  /** The number lies where a band of the policy says that its source is silent. */
  private BoolExpr leftOpen(String finding, Z3Logic of) {
    return of.any(
        policy.bands().stream()
            .filter(b -> b.of().equals(finding) && b.notStated().isPresent())
            .map(b -> new ConditionTeller<>(of, policy).inNamedBand(in(b)).yes())
            .toList());
  }

  private static Condition.InNamedBand in(NamedBand band) {
    return new Condition.InNamedBand(band.of(), band.name());
  }
}
