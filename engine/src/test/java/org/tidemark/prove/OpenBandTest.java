package org.tidemark.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.Rule;
import org.tidemark.model.Worse;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.PlainPolicies;

/**
 * A band of which the source is silent takes its readings out of the order from better to worse,
 * and takes out no other, even where no rule looks at the band. Here the policy wrongly proceeds at
 * 5 or more of a measure that gets worse as it rises, from 0 to 9.
 */
class OpenBandTest {
  private static final Place NOWHERE = Place.at(SourceText.of("made up", "x").beginning());

  @ParameterizedTest
  @CsvSource({
    "0, 1, refuted, 'readings from 2 to 4 are left to compare with'",
    "6, 7, refuted, 'readings of 5 and from 8 are left to compare with'",
    "0, 3, refuted, 'the reading 4 is left to compare with'",
    "0, 4, proved, 'no reading is left that does not proceed'",
    "5, 9, proved, 'no reading is left that proceeds'",
  })
  void anOpenBandTakesNoOtherReadingOutOfTheOrder(
      int from, int until, String expected, String why) {
    Verdict verdict =
        new Prover()
            .prove(policy(from, until), Optional.empty()).stream()
                .filter(p -> p.claim().kind() == Claim.Kind.WORSE_NEVER_LOOSENS)
                .findFirst()
                .map(Proof::verdict)
                .orElse(new Verdict.Proved());
    assertEquals(expected, verdict.proved() ? "proved" : "refuted", why);
  }

  private static EffectivePolicy policy(int from, int until) {
    Domain whole =
        new Domain.Measure("mL", BigDecimal.ZERO, BigDecimal.valueOf(9), BigDecimal.ONE, List.of());
    Finding drained =
        new Finding(
            "drained",
            "How much drained?",
            whole,
            new Worse.Higher(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            BigDecimal.ONE,
            Optional.empty(),
            Optional.empty(),
            NOWHERE);
    NamedBand silent =
        new NamedBand(
            "silent",
            "drained",
            new Band(end(from), end(until)),
            Optional.of("The source is silent here."),
            Optional.empty(),
            List.of(),
            NOWHERE);
    Policy policy = PlainPolicies.written(List.of(silent), List.of(), List.of(rule()));
    return PlainPolicies.combined(List.of(drained), policy)
        .match(
            p -> p,
            errors -> {
              throw new AssertionError(errors.toString());
            });
  }

  private static Optional<Bound> end(int number) {
    return Optional.of(new Bound(new Limit.Fixed(BigDecimal.valueOf(number)), true));
  }

  private static Rule rule() {
    Condition much = new Condition.InBand("drained", new Band(end(5), Optional.empty()));
    return PlainPolicies.rule("much", Effect.ALLOW, List.of(much), Set.of());
  }
}
