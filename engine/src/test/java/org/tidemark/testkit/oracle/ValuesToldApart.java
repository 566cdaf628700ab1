package org.tidemark.testkit.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Seen;

/**
 * Of each finding so many values that every other is as good as one of them: all options, and the
 * numbers at each limit and one step beside it, also as far from there as a reading may be off.
 */
final class ValuesToldApart {
  private final EffectivePolicy policy;
  private final List<Atom> atoms;

  ValuesToldApart(EffectivePolicy policy, List<Condition> conditions) {
    this.policy = policy;
    this.atoms =
        conditions.stream()
            .flatMap(c -> Alternatives.of(policy, c).stream())
            .flatMap(List::stream)
            .toList();
  }

  List<Seen> of(String name) {
    Finding finding = policy.vocabulary().require(name);
    List<Seen> all = new ArrayList<>();
    finding.domain().options().forEach(o -> all.add(Seen.option(o.name())));
    if (finding.domain() instanceof Domain.Measure measure) {
      numbers(name, measure).forEach(n -> all.add(Seen.number(n)));
    }
    return all;
  }

  private Set<BigDecimal> numbers(String name, Domain.Measure measure) {
    Set<BigDecimal> numbers = new TreeSet<>(List.of(measure.lowest(), measure.highest()));
    BigDecimal off = policy.howFarOff(name).orElse(BigDecimal.ZERO);
    atoms.stream()
        .filter(a -> a.finding().equals(name))
        .flatMap(a -> a.stretch().stream())
        .flatMap(s -> Stream.of(s.lower(), s.upper()).flatMap(Optional::stream))
        .flatMap(n -> Stream.of(n, n.subtract(off), n.add(off)))
        .flatMap(n -> Stream.of(n, n.subtract(measure.step()), n.add(measure.step())))
        .filter(measure::inRange)
        .forEach(numbers::add);
    return numbers;
  }
}
