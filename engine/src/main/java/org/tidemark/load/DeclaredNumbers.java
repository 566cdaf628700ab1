package org.tidemark.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.model.Bound;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Vocabulary;

/** The numbers that a policy and the layers below it declare, by unit. */
final class DeclaredNumbers {
  private record Declared(String name, String unit, BigDecimal number) {}

  private final List<Declared> all = new ArrayList<>();

  DeclaredNumbers(Vocabulary vocabulary) {
    vocabulary.findings().forEach(this::step);
  }

  private void step(Finding finding) {
    if (finding.domain() instanceof Domain.Measure measure) {
      all.add(new Declared("", measure.unit(), measure.step()));
    }
  }

  void learn(PolicyValue value) {
    if (value.content() instanceof PolicyValue.Single single) {
      all.add(new Declared(value.name(), value.unit(), single.number()));
    }
    if (value.content() instanceof PolicyValue.Range range) {
      all.add(new Declared(value.name(), value.unit(), range.atLeast()));
      all.add(new Declared(value.name(), value.unit(), range.atMost()));
    }
  }

  void learn(NamedBand band, Vocabulary vocabulary) {
    Optional<String> unit =
        vocabulary
            .finding(band.of())
            .map(Finding::domain)
            .filter(Domain.Measure.class::isInstance)
            .map(domain -> ((Domain.Measure) domain).unit());
    unit.ifPresent(
        u ->
            Stream.of(band.band().lower(), band.band().upper())
                .flatMap(Optional::stream)
                .map(Bound::limit)
                .filter(Limit.Fixed.class::isInstance)
                .map(Limit.Fixed.class::cast)
                .forEach(limit -> all.add(new Declared("", u, limit.number()))));
  }

  boolean holds(String number, String unit) {
    BigDecimal wanted = new BigDecimal(Units.digits(number));
    return all.stream()
        .anyMatch(d -> d.unit().equals(Units.meant(unit)) && d.number().compareTo(wanted) == 0);
  }

  /** The names of the values of a unit, each once. */
  List<String> namesOf(String unit) {
    return all.stream()
        .filter(d -> d.unit().equals(Units.meant(unit)) && !d.name().isEmpty())
        .map(Declared::name)
        .distinct()
        .toList();
  }
}
