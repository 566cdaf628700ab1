package org.tidemark.testkit.oracle;

import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.Model;
import com.microsoft.z3.Params;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.prove.Claim;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/**
 * Decides the claims about one question with Z3. What it cannot decide is an error, and never
 * passes.
 */
final class Z3Oracle implements AutoCloseable {
  private static final Place FOUND =
      Place.at(SourceText.of("found by the solver", "case").beginning());
  private static final int LONGEST_MILLIS = 20_000;

  private static final BoolExpr[] NO_MORE = {};

  private final Context context = new Context();
  private final EffectivePolicy policy;
  private final Optional<EffectivePolicy> floor;
  private final Z3Claims claims;
  private final Solver solver;

  Z3Oracle(EffectivePolicy policy, Optional<EffectivePolicy> floor, EffectiveQuestion question) {
    this.policy = policy;
    this.floor = floor;
    this.claims = new Z3Claims(context, policy, floor, question);
    this.solver = context.mkSolver();
    Params limits = context.mkParams();
    limits.add("timeout", LONGEST_MILLIS);
    solver.setParameters(limits);
    add(claims.logic().domains());
  }

  Z3Claims all() {
    return claims;
  }

  List<Sought> claims() {
    return claims.all();
  }

  /** The cases of what is sought: none if there is no such case; two for a claim about two. */
  List<Shown> find(Sought sought) {
    solver.push();
    add(sought.formula());
    List<Shown> found = satisfied() ? shown(sought, solver.getModel()) : List.of();
    solver.pop();
    return found;
  }

  /** Whether some case is as a formula says. */
  boolean exists(BoolExpr formula) {
    solver.push();
    add(formula);
    boolean some = satisfied();
    solver.pop();
    return some;
  }

  /** Whether a case is one of those that are sought; for a claim about two, the second of them. */
  boolean admits(Sought sought, Findings witness) {
    solver.push();
    add(sought.formula());
    for (String finding : sought.looksAt()) {
      Z3Logic of =
          sought.differs().filter(finding::equals).map(claims::second).orElse(claims.logic());
      add(of.matches(finding, witness.entry(finding).map(Findings.Entry::seen)));
    }
    boolean admitted = satisfied();
    solver.pop();
    return admitted;
  }

  private void add(BoolExpr formula) {
    solver.add(new BoolExpr[] {formula});
  }

  private boolean satisfied() {
    Status status = solver.check(NO_MORE);
    if (status == Status.UNKNOWN) {
      throw new AssertionError("Z3 could not tell: " + solver.getReasonUnknown());
    }
    return status == Status.SATISFIABLE;
  }

  private List<Shown> shown(Sought sought, Model model) {
    List<Shown> all = new ArrayList<>();
    Findings first = findings(sought, Optional.empty(), model);
    all.add(answered(policy, claims.told(), first, formula -> formula, model));
    if (sought.kind() == Claim.Kind.NEVER_LOOSER_THAN_FLOOR) {
      Told<BoolExpr> below = claims.below().orElseThrow();
      all.add(answered(floor.orElseThrow(), below, first, formula -> formula, model));
    }
    sought.differs().map(claims::second).ifPresent(s -> all.add(second(sought, s, model)));
    return all;
  }

  private Shown second(Sought sought, Z3Logic second, Model model) {
    return answered(
        policy,
        claims.told(),
        findings(sought, Optional.of(second), model),
        formula -> claims.logic().saidOf(second, formula),
        model);
  }

  private Findings findings(Sought sought, Optional<Z3Logic> second, Model model) {
    Z3Logic first = claims.logic();
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    for (String finding : sought.looksAt()) {
      boolean differs = sought.differs().filter(finding::equals).isPresent();
      Z3Logic of = differs ? second.orElse(first) : first;
      of.seen(finding, model).ifPresent(s -> entries.put(finding, new Findings.Entry(s, FOUND)));
    }
    return new Findings(entries);
  }

  private Shown answered(
      EffectivePolicy of,
      Told<BoolExpr> told,
      Findings findings,
      UnaryOperator<BoolExpr> said,
      Model model) {
    Set<String> fired = new TreeSet<>();
    for (Spoken rule : told.rules()) {
      if (model.eval(said.apply(told.fires(rule.name())), true).isTrue()) {
        fired.add(rule.name());
      }
    }
    Outcome outcome =
        Stream.of(Outcome.values())
            .filter(o -> model.eval(said.apply(told.is(o)), true).isTrue())
            .findFirst()
            .orElseThrow();
    return new Shown(of, claims.question(), findings, outcome, fired);
  }

  @Override
  public void close() {
    context.close();
  }
}
