package org.tidemark.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.model.Axis;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Care;
import org.tidemark.model.Condition;
import org.tidemark.model.Declared;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Question;
import org.tidemark.model.Rule;
import org.tidemark.model.Scope;
import org.tidemark.model.Standing;
import org.tidemark.model.Status;
import org.tidemark.model.Vocabulary;
import org.tidemark.model.Worse;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

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
    Question use =
        new Question(
            "use", Optional.of("May it?"), Map.of(), Set.of(), Set.of(), List.of(rule()), NOWHERE);
    Care care = new Care(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of());
    Policy policy =
        new Policy(
            header(),
            List.of(),
            List.of(silent),
            List.of(),
            List.of(),
            List.of(use),
            care,
            List.of(),
            Declared.NOTHING);
    return Layering.combine(new Vocabulary("v", 1, List.of(drained)), List.of(policy))
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
    return new Rule(
        "much",
        "made-up",
        Effect.ALLOW,
        Axis.POSITION,
        new Condition.InBand("drained", new Band(end(5), Optional.empty())),
        Set.of(),
        new Rule.Says(Optional.empty(), Optional.empty(), List.of()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        new Rule.Backing(Standing.LOCAL, List.of()),
        NOWHERE);
  }

  private static Header header() {
    return new Header(
        "made-up",
        PolicyKind.PUBLISHED,
        "Made up",
        "Nobody",
        1,
        Status.DRAFT,
        Optional.empty(),
        Optional.empty(),
        new Scope(List.of(), List.of(), NOWHERE),
        Optional.empty(),
        NOWHERE);
  }
}
