package org.tidemark.layer;

import java.math.BigInteger;
import org.tidemark.model.Care;
import org.tidemark.model.Condition;
import org.tidemark.model.Lapse;
import org.tidemark.model.TubeOrder;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/** Refuses a condition that would spell out into more alternatives than can be looked at. */
final class WayChecks {
  static final BigInteger MOST = BigInteger.valueOf(1_000);
  static final BigInteger MOST_IN_ALL = BigInteger.valueOf(5_000);
  static final BigInteger MOST_PAIRS = BigInteger.valueOf(100_000);

  private final EffectivePolicy policy;
  private final Problems problems;
  private BigInteger all = BigInteger.ZERO;

  WayChecks(EffectivePolicy policy, Problems problems) {
    this.policy = policy;
    this.problems = problems;
  }

  void check() {
    statements();
    policy
        .questions()
        .forEach(
            q ->
                q.rules().forEach(r -> check("the rule `" + r.name() + "`", r.given(), r.place())));
    Care care = policy.care();
    care.fallbacks().forEach(f -> check("`after` of `" + f.name() + "`", f.after(), f.place()));
    for (Lapse lapse : care.lapses()) {
      lapse.triggers().seen().ifPresent(s -> check("`" + lapse.name() + "`", s, lapse.place()));
    }
    if (all.compareTo(MOST_IN_ALL) > 0) {
      problems.add(
          tooMany(policy.header().place(), "all conditions together can hold", all, MOST_IN_ALL));
    }
    policy.questions().forEach(this::tubeOrders);
  }

  private void statements() {
    policy
        .statements()
        .forEach(s -> check("the statement `" + s.name() + "`", s.given(), s.place()));
  }

  private void check(String what, Condition condition, Place place) {
    BigInteger ways = Ways.of(policy, condition);
    all = all.add(ways);
    if (ways.compareTo(MOST) > 0) {
      problems.add(tooMany(place, what + " can hold", ways, MOST));
    }
  }

  /** Each rule that takes the tube out is held against each that leaves it in, way by way. */
  private void tubeOrders(EffectiveQuestion question) {
    BigInteger pairs =
        ways(question, TubeOrder.TAKE_OUT).multiply(ways(question, TubeOrder.LEAVE_IN));
    if (pairs.compareTo(MOST_PAIRS) > 0) {
      problems.add(
          tooMany(
              policy.header().place(),
              "the rules of `" + question.name() + "` that order the tube out and in can meet",
              pairs,
              MOST_PAIRS));
    }
  }

  private BigInteger ways(EffectiveQuestion question, TubeOrder order) {
    return question.rules().stream()
        .filter(r -> r.tube().filter(t -> t == order).isPresent())
        .map(r -> Ways.of(policy, r.given()))
        .reduce(BigInteger.ZERO, BigInteger::add);
  }

  private static Diagnostic tooMany(Place place, String what, BigInteger ways, BigInteger most) {
    return Diagnostic.error(
            DiagnosticCode.TOO_MANY_WAYS,
            place.span(),
            what + " in " + ways + " ways, and " + most + " are the most")
        .help("ask for fewer of them, or make several rules of it");
  }
}
