package org.tidemark.testkit.oracle;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Model;
import com.microsoft.z3.Params;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Seen;
import org.tidemark.testkit.FoundAnew;

/**
 * Smallest sets of findings by Z3: whether some findings leave only one outcome, and whether fewer
 * do as well. Every smaller set is tried, each with every value that a rule tells apart.
 */
public final class SmallestSetsOracle implements AutoCloseable {
  private static final int LONGEST_MILLIS = 20_000;
  private static final BoolExpr[] NO_MORE = {};

  private final Context context = new Context();
  private final EffectivePolicy policy;
  private final FoundAnew anew;
  private final Set<String> lookedAt;
  private final Map<String, List<Seen>> values = new LinkedHashMap<>();
  private final Z3Logic one;
  private final Z3Logic other;
  private final Told<BoolExpr> told;
  private final Solver solver;

  public SmallestSetsOracle(EffectivePolicy policy, String question) {
    List<Spoken> rules = Spoken.of(policy, policy.question(question).orElseThrow());
    List<String> all = policy.vocabulary().names();
    this.policy = policy;
    this.anew = new FoundAnew(policy.vocabulary());
    this.lookedAt = Mentions.of(policy, rules.stream().map(Spoken::given));
    ValuesToldApart apart = new ValuesToldApart(policy, rules.stream().map(Spoken::given).toList());
    lookedAt.forEach(f -> values.put(f, apart.of(f)));
    this.one = new Z3Logic(context, policy.vocabulary(), all, "");
    this.other = new Z3Logic(context, policy.vocabulary(), all, "'");
    this.told = new Told<>(one, policy, rules);
    this.solver = solver();
    BoolExpr laws = Told.laws(one, policy, new LinkedHashSet<>(all));
    solver.add(new BoolExpr[] {one.domains(), laws});
  }

  private Solver solver() {
    Solver made = context.mkSolver();
    Params limits = context.mkParams();
    limits.add("timeout", LONGEST_MILLIS);
    made.setParameters(limits);
    return made;
  }

  private BigDecimal off(String finding) {
    return policy.howFarOff(finding).orElse(BigDecimal.ZERO);
  }

  /** What was entered, said of the truth: a reading says that the truth is near enough. */
  private BoolExpr says(Z3Logic of, String finding, Seen seen) {
    List<BoolExpr> either = new ArrayList<>(List.of(of.word(finding, seen.options())));
    seen.from()
        .ifPresent(
            from -> {
              BigDecimal low = from.subtract(off(finding));
              BigDecimal high = seen.to().orElseThrow().add(off(finding));
              either.add(
                  of.all(
                      List.of(
                          of.number(finding), of.atLeast(finding, low), of.atMost(finding, high))));
            });
    return of.any(either);
  }

  private BoolExpr says(Z3Logic of, Findings known) {
    return of.all(
        known.entries().entrySet().stream()
            .map(e -> says(of, e.getKey(), e.getValue().seen()))
            .toList());
  }

  private static void add(Solver solver, BoolExpr... all) {
    solver.add(all);
  }

  private static boolean exists(Solver solver, BoolExpr... all) {
    solver.push();
    solver.add(all);
    boolean exists = check(solver);
    solver.pop();
    return exists;
  }

  private static boolean check(Solver solver) {
    Status status = solver.check(NO_MORE);
    if (status == Status.UNKNOWN) {
      throw new AssertionError("Z3 could not tell: " + solver.getReasonUnknown());
    }
    return status == Status.SATISFIABLE;
  }

  /** What the cases come to that what is known leaves open. */
  public Set<Outcome> possible(Findings known) {
    Set<Outcome> possible = EnumSet.noneOf(Outcome.class);
    for (Outcome outcome : Outcome.values()) {
      if (exists(solver, says(one, known), told.is(outcome))) {
        possible.add(outcome);
      }
    }
    return possible;
  }

  /** Whether some case is left, and all that are left come to the outcome. */
  public boolean leavesOnly(Findings known, Outcome outcome) {
    BoolExpr known1 = says(one, known);
    return !exists(solver, known1, one.not(told.is(outcome))) && exists(solver, known1);
  }

  /** Whether some part of what was entered, smaller than this, forces the outcome. */
  public boolean smallerForces(Findings entered, Outcome outcome, int size) {
    List<String> names = List.copyOf(entered.entries().keySet());
    solver.push();
    add(solver, one.not(told.is(outcome)));
    boolean smaller =
        fewerLeaveNone(solver, choosing(names, size), names, f -> says(one, f, seen(entered, f)));
    solver.pop();
    return smaller;
  }

  private static Seen seen(Findings entered, String finding) {
    return entered.entry(finding).orElseThrow().seen();
  }

  /** Chooses fewer than so many. */
  private Solver choosing(List<String> names, int size) {
    Solver choosing = solver();
    BoolExpr[] chosen = names.stream().map(this::chosen).toArray(BoolExpr[]::new);
    add(
        choosing,
        size > 0 && !names.isEmpty()
            ? context.mkAtMost(chosen, Math.min(size - 1, names.size()))
            : context.mkBool(size > 0));
    return choosing;
  }

  /**
   * Whether some choice leaves nothing to a solver in which what is said of each that is chosen
   * holds. From whatever is left it learns that something else is needed, as little as can be.
   */
  private boolean fewerLeaveNone(
      Solver left, Solver choosing, List<String> names, Function<String, BoolExpr> said) {
    while (check(choosing)) {
      Model model = choosing.getModel();
      List<String> choice =
          names.stream().filter(n -> model.eval(chosen(n), true).isTrue()).toList();
      Optional<List<String>> against = against(left, choice, names, said);
      if (against.isEmpty()) {
        return true;
      }
      add(choosing, one.any(against.get().stream().map(this::chosen).toList()));
    }
    return false;
  }

  private static Optional<List<String>> against(
      Solver left, List<String> choice, List<String> names, Function<String, BoolExpr> said) {
    left.push();
    choice.forEach(f -> add(left, said.apply(f)));
    Optional<List<String>> against = Optional.empty();
    if (check(left)) {
      List<String> all = new ArrayList<>();
      for (String name : names) {
        if (exists(left, said.apply(name))) {
          add(left, said.apply(name));
        } else {
          all.add(name);
        }
      }
      against = Optional.of(all);
    }
    left.pop();
    return against;
  }

  /**
   * Whether fewer findings than this, each with some value, leave only the outcome.
   *
   * @param entered what is known
   * @param outcome the outcome
   * @param size fewer than so many
   * @param renewed whether what can be got anew may come out otherwise than it was entered
   */
  public boolean fewerBring(Findings entered, Outcome outcome, int size, boolean renewed) {
    return bring(
        Set.of(), Findings.NONE, List.copyOf(lookedAt), entered, outcome, size - 1, renewed);
  }

  private boolean bring(
      Set<String> names,
      Findings found,
      List<String> rest,
      Findings entered,
      Outcome outcome,
      int left,
      boolean renewed) {
    if (left < 0) {
      return false;
    }
    Findings known = renewed ? anew.stillKnown(entered, names) : entered;
    if (leavesOnly(with(known, found), outcome)) {
      return true;
    }
    for (int i = 0; i < rest.size() && left > 0; i++) {
      String name = rest.get(i);
      Set<String> more = new LinkedHashSet<>(names);
      more.add(name);
      for (Seen seen : values.getOrDefault(name, List.of())) {
        boolean may = (renewed && anew.renewed(name)) || meets(name, entered, seen);
        Findings with = found.with(name, new Findings.Entry(seen, FoundAnew.NOWHERE));
        if (may
            && bring(
                more,
                with,
                rest.subList(i + 1, rest.size()),
                entered,
                outcome,
                left - 1,
                renewed)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Findings with(Findings known, Findings found) {
    Findings all = known;
    for (Map.Entry<String, Findings.Entry> each : found.entries().entrySet()) {
      all = all.with(each.getKey(), each.getValue());
    }
    return all;
  }

  /** Whether something can be read so that does not speak against what was entered. */
  private boolean meets(String name, Findings entered, Seen seen) {
    return entered.entry(name).isEmpty()
        || exists(solver, says(one, name, entered.entry(name).get().seen()), says(one, name, seen));
  }

  /** Whether to know these findings settles the case, whatever they show. */
  public boolean settles(Findings entered, Set<String> findings) {
    Solver pairs = pairs(entered);
    findings.forEach(f -> add(pairs, alike(f)));
    return !exists(pairs, differ());
  }

  /** Whether fewer findings than this settle the case whatever they show. */
  public boolean fewerSettle(Findings entered, int size) {
    Solver pairs = pairs(entered);
    List<String> names = List.copyOf(lookedAt);
    Solver choosing = choosing(names, size);
    for (String name : names) {
      for (Condition.Options parent : policy.vocabulary().require(name).applies()) {
        if (exists(pairs, one.not(alike(parent.finding())))) {
          add(choosing, context.mkImplies(chosen(name), chosen(parent.finding())));
        }
      }
    }
    add(pairs, differ());
    return fewerLeaveNone(pairs, choosing, names, this::alike);
  }

  private BoolExpr chosen(String finding) {
    return context.mkBoolConst("chosen " + finding);
  }

  /** Two cases that may both be so. */
  private Solver pairs(Findings entered) {
    Solver pairs = solver();
    BoolExpr lawful =
        one.all(
            List.of(
                one.domains(),
                Told.laws(one, policy, new LinkedHashSet<>(policy.vocabulary().names())),
                says(one, entered)));
    pairs.add(new BoolExpr[] {lawful, one.saidOf(other, lawful)});
    return pairs;
  }

  private BoolExpr differ() {
    List<BoolExpr> ways = new ArrayList<>();
    for (Outcome outcome : Outcome.values()) {
      BoolExpr is = told.is(outcome);
      ways.add(one.all(List.of(is, one.not(one.saidOf(other, is)))));
    }
    return one.any(ways);
  }

  private BoolExpr alike(String finding) {
    return one.alike(finding, other, off(finding).multiply(BigDecimal.valueOf(2)));
  }

  @Override
  public void close() {
    context.close();
  }
}
