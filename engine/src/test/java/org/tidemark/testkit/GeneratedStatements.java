package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;
import org.tidemark.model.Statement;
import org.tidemark.model.Value;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/**
 * What a generated policy says is always or never so, drawn from a seed: now and then what its
 * rules make true, now and then anything at all. It has draws of its own, so that the rest of a
 * seed's policy stays as it is.
 */
final class GeneratedStatements {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());
  private static final int MOST = 4;

  private final Random random;
  private final List<Finding> findings;

  GeneratedStatements(long seed, List<Finding> findings) {
    this.random = new Random(seed + 41);
    this.findings = findings;
  }

  /** A few statements, without those that the checks of a policy do not accept. */
  List<Statement> about(List<Rule> rules, Predicate<Statement> accepted) {
    List<Statement> all = new ArrayList<>();
    for (int i = 0; i < MOST; i++) {
      Statement statement = random.nextBoolean() ? ofRule("s" + i, pick(rules)) : anything("s" + i);
      if (accepted.test(statement)) {
        all.add(statement);
      }
    }
    return all;
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  private Statement ofRule(String name, Rule rule) {
    return rule.effect() == Effect.ESCALATE
        ? statement(name, Statement.Mode.ALWAYS, rule.given(), Outcome.ESCALATE)
        : statement(name, Statement.Mode.NEVER, rule.given(), Outcome.PROCEED);
  }

  private Statement anything(String name) {
    List<Condition> parts = new ArrayList<>(List.of(test(pick(findings))));
    if (random.nextBoolean()) {
      parts.add(test(pick(findings)));
    }
    return statement(
        name,
        pick(List.of(Statement.Mode.values())),
        new Condition.AllOf(parts),
        pick(List.of(Outcome.values())));
  }

  private Condition test(Finding finding) {
    return finding.domain() instanceof Domain.Measure measure && random.nextBoolean()
        ? new Condition.OtherThan(finding.name(), new Value.Amount(measure.highest()))
        : option(finding);
  }

  private Condition option(Finding finding) {
    if (finding.domain().options().isEmpty()) {
      return new Condition.OtherThan(
          finding.name(), new Value.Amount(((Domain.Measure) finding.domain()).lowest()));
    }
    return new Condition.Options(finding.name(), Set.of(pick(finding.domain().options()).name()));
  }

  private static Statement statement(
      String name, Statement.Mode mode, Condition given, Outcome answer) {
    return new Statement(
        name,
        "generated",
        mode,
        "use",
        given,
        answer,
        "It is so.",
        Optional.of("It was drawn."),
        new Rule.Backing(Standing.LOCAL, List.of()),
        NOWHERE);
  }
}
