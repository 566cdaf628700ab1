package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.decide.Decider;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Policy;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * A question that comes after another answers what the more cautious of the two would answer, each
 * by itself: tried on cases drawn from a seed, against the same policy with the word {@code after}
 * taken out.
 */
class QuestionAfterAnotherTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final int CASES = 3_000;

  private static EffectivePolicy apart(String folder, List<Policy> below) {
    String text = Shipped.text(folder + "/policy.yaml").replace("    after: use\n", "");
    Policy policy =
        Shipped.sound(
            new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
                .load(
                    Shipped.sound(new YamlReader().read(SourceText.of("apart.yaml", text))),
                    below));
    List<Policy> layers = new java.util.ArrayList<>(below);
    layers.add(policy);
    return Shipped.sound(Layering.combine(Shipped.words().vocabulary(), layers));
  }

  private static Outcome ask(EffectivePolicy policy, String question, Findings findings) {
    return Decider.of(policy, question).orElseThrow().decide(findings, TODAY).outcome();
  }

  @ParameterizedTest
  @CsvSource({
    "constructs/feed-after-use, ''",
    "published/po-18-farrer-park, ''",
    "policies/example-general-adult, floor"
  })
  void theMoreCautiousOfTheTwo(String folder, String floor) {
    EffectivePolicy together = Shipped.policy(folder);
    EffectivePolicy apart = apart(folder, floor.isEmpty() ? List.of() : List.of(Shipped.floor()));
    KnownCases cases = new KnownCases(together.vocabulary(), Shipped.words().usual(), 7, 9);
    Map<Outcome, Integer> seen = new EnumMap<>(Outcome.class);
    for (int i = 0; i < CASES; i++) {
      Findings findings = KnownCases.findings(cases.draw(Findings.NONE));
      Outcome use = ask(apart, "use", findings);
      Outcome feed = ask(apart, "feed", findings);
      Outcome expected = use.compareTo(feed) > 0 ? use : feed;
      assertEquals(expected, ask(together, "feed", findings), findings::toString);
      seen.merge(expected, 1, Integer::sum);
    }
    assertTrue(seen.getOrDefault(Outcome.PROCEED, 0) > 0, seen::toString);
    assertTrue(seen.getOrDefault(Outcome.HOLD, 0) > 0, seen::toString);
  }
}
