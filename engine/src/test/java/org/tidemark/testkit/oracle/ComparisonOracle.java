package org.tidemark.testkit.oracle;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Params;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Outcome;

/**
 * Which cases two policies answer differently, by Z3: for each rule and each two outcomes, whether
 * there is a case in which the rule fires in the one and not in the other, and which the one
 * answers with the first and the other with the second.
 */
public final class ComparisonOracle implements AutoCloseable {
  private static final int LONGEST_MILLIS = 20_000;
  private static final BoolExpr[] NO_MORE = {};

  private final Context context = new Context();
  private final Z3Logic logic;
  private final Told<BoolExpr> before;
  private final Told<BoolExpr> after;
  private final Solver solver;

  private ComparisonOracle(EffectivePolicy one, EffectivePolicy other, String question) {
    List<Spoken> was = Spoken.of(one, one.question(question).orElseThrow());
    List<Spoken> is = Spoken.of(other, other.question(question).orElseThrow());
    Set<String> names = new LinkedHashSet<>(Mentions.of(one, was.stream().map(Spoken::given)));
    names.addAll(Mentions.of(other, is.stream().map(Spoken::given)));
    this.logic = new Z3Logic(context, one.vocabulary(), names, "");
    this.before = new Told<>(logic, one, was);
    this.after = new Told<>(logic, other, is);
    this.solver = context.mkSolver();
    Params limits = context.mkParams();
    limits.add("timeout", LONGEST_MILLIS);
    solver.setParameters(limits);
    solver.add(new BoolExpr[] {logic.domains(), Told.laws(logic, one, names)});
  }

  /** Each change as the rule, what was answered and what is answered now. */
  public static Set<String> changes(EffectivePolicy one, EffectivePolicy other, String question) {
    try (ComparisonOracle oracle = new ComparisonOracle(one, other, question)) {
      Set<String> rules = new TreeSet<>();
      oracle.before.rules().forEach(r -> rules.add(r.name()));
      oracle.after.rules().forEach(r -> rules.add(r.name()));
      Set<String> changes = new TreeSet<>();
      rules.forEach(r -> oracle.changes(r, changes));
      return changes;
    }
  }

  private void changes(String rule, Set<String> changes) {
    for (Outcome from : Outcome.values()) {
      for (Outcome to : EnumSet.complementOf(EnumSet.of(from))) {
        if (exists(List.of(firesInOne(rule), before.is(from), after.is(to)))) {
          changes.add(rule + " " + from + " " + to);
        }
      }
    }
  }

  private BoolExpr firesInOne(String rule) {
    return context.mkXor(fires(before, rule), fires(after, rule));
  }

  private BoolExpr fires(Told<BoolExpr> told, String rule) {
    Predicate<Spoken> named = r -> r.name().equals(rule);
    return told.rules().stream().anyMatch(named) ? told.fires(rule) : context.mkFalse();
  }

  private boolean exists(List<BoolExpr> all) {
    solver.push();
    solver.add(all.toArray(NO_MORE));
    Status status = solver.check(NO_MORE);
    solver.pop();
    if (status == Status.UNKNOWN) {
      throw new AssertionError("Z3 could not tell: " + solver.getReasonUnknown());
    }
    return status == Status.SATISFIABLE;
  }

  @Override
  public void close() {
    context.close();
  }
}
