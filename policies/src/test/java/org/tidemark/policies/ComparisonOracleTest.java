package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Policy;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Prover;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.GeneratedPolicies;
import org.tidemark.testkit.oracle.ComparisonOracle;
import org.tidemark.yaml.YamlReader;

/**
 * What two editions answer differently, against Z3 4.14 (through z3-turnkey): the same rules, from
 * the same answers to the same answers.
 */
class ComparisonOracleTest {
  private static Set<String> ours(EffectivePolicy one, EffectivePolicy other, String question) {
    Comparison comparison = Comparison.of(one, other, Prover.BUDGET);
    assertTrue(comparison.settled());
    Set<String> changes = new TreeSet<>();
    comparison.changes().stream()
        .filter(c -> c.question().equals(question))
        .forEach(c -> changes.add(c.rule() + " " + c.from() + " " + c.to()));
    return changes;
  }

  private static EffectivePolicy hospital(String from, String to) {
    String text = Shipped.text(Shipped.HOSPITAL + "/policy.yaml");
    assertTrue(text.contains(from), from);
    SourceText edited = SourceText.of("policy.yaml", text.replace(from, to));
    List<Policy> floor = List.of(Shipped.floor());
    Policy hospital =
        Shipped.sound(
            new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
                .load(Shipped.sound(new YamlReader().read(edited)), floor));
    return Shipped.sound(
        Layering.combine(Shipped.words().vocabulary(), List.of(floor.get(0), hospital)));
  }

  @ParameterizedTest
  @CsvSource({
    "'    is: 4.0', '    is: 3.5'",
    "'    is: 5.0', '    is: 4.5'",
    "'    is: 12\n    unit: h', '    is: 8\n    unit: h'",
    "'title:', 'title:'"
  })
  void anEditedHospital(String from, String to) {
    EffectivePolicy before = Shipped.policy(Shipped.HOSPITAL);
    EffectivePolicy after = hospital(from, to);
    for (String question : List.of("use", "pass")) {
      Set<String> changes = ComparisonOracle.changes(before, after, question);
      assertEquals(changes, ours(before, after, question));
      assertTrue(!from.equals(to) || changes.isEmpty(), changes::toString);
    }
  }

  @Test
  void generatedPoliciesTooLargeToEnumerate() {
    int equal = 0;
    for (long seed = 100; seed < 130; seed++) {
      List<EffectivePolicy> two = GeneratedPolicies.twoTrimmed(seed, 10, 16);
      Set<String> changes = ComparisonOracle.changes(two.get(0), two.get(1), "use");
      assertEquals(changes, ours(two.get(0), two.get(1), "use"), "seed " + seed);
      equal += changes.isEmpty() ? 1 : 0;
    }
    assertTrue(equal > 3 && equal < 27, "equal: " + equal);
  }
}
