package org.tidemark.testkit.oracle;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;

/** The findings that conditions look at, by name, and those that they hang on. */
public final class Mentions implements Condition.Visitor<Stream<String>> {
  private final EffectivePolicy policy;

  private Mentions(EffectivePolicy policy) {
    this.policy = policy;
  }

  /** In asking order. */
  public static Set<String> of(EffectivePolicy policy, Stream<Condition> conditions) {
    Mentions mentions = new Mentions(policy);
    Set<String> names = new LinkedHashSet<>();
    conditions.flatMap(c -> c.accept(mentions)).forEach(f -> withParents(policy, f, names));
    Set<String> ordered = new LinkedHashSet<>(policy.vocabulary().names());
    ordered.retainAll(names);
    return ordered;
  }

  private static void withParents(EffectivePolicy policy, String finding, Set<String> names) {
    if (names.add(finding)) {
      Finding known = policy.vocabulary().require(finding);
      known.applies().forEach(p -> withParents(policy, p.finding(), names));
    }
  }

  private Stream<String> each(List<Condition> conditions) {
    return conditions.stream().flatMap(c -> c.accept(this));
  }

  @Override
  public Stream<String> allOf(Condition.AllOf all) {
    return each(all.parts());
  }

  @Override
  public Stream<String> anyOf(Condition.AnyOf any) {
    return each(any.alternatives());
  }

  @Override
  public Stream<String> someOf(Condition.SomeOf some) {
    return each(some.parts());
  }

  @Override
  public Stream<String> options(Condition.Options options) {
    return Stream.of(options.finding());
  }

  @Override
  public Stream<String> otherThan(Condition.OtherThan other) {
    return Stream.of(other.finding());
  }

  @Override
  public Stream<String> inBand(Condition.InBand in) {
    return Stream.of(in.finding());
  }

  @Override
  public Stream<String> inNamedBand(Condition.InNamedBand in) {
    return Stream.of(in.finding());
  }

  @Override
  public Stream<String> termIs(Condition.TermIs is) {
    return each(policy.term(is.term()).orElseThrow().alternatives());
  }
}
