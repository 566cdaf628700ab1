package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Kind;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.Policy;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * A plan for one patient may set what its policy leaves to plans, by the role that it names, until
 * its last day; after that it lets nothing proceed.
 */
class PlanForOnePatientTest {
  private static final LocalDate LAST_DAY = LocalDate.of(2027, 3, 1);

  private static Findings findings(String text) {
    return Shipped.sound(
        FindingsLoader.load(
            Shipped.sound(new YamlReader().read(SourceText.of("findings", text))),
            Shipped.words().vocabulary()));
  }

  private static Decision ask(LocalDate day, String text) {
    return Decider.of(Shipped.policy(Shipped.PLAN), "use")
        .orElseThrow()
        .decide(findings(text), day);
  }

  private static final String SIX =
      "{population: adult, aspirate: obtained, strip: gastric, ph: 6.0}";

  @Test
  void itHoldsUntilItsLastDayAndLetsNothingProceedAfterIt() {
    Decision lastDay = ask(LAST_DAY, SIX);
    assertEquals(Outcome.PROCEED, lastDay.outcome());
    assertTrue(
        lastDay
            .cautions()
            .contains(
                "This is a plan for one patient, agreed until 1 March 2027 (Nutrition consultant). It holds for nobody else."),
        lastDay.cautions()::toString);
    Decision after = ask(LAST_DAY.plusDays(1), SIX);
    assertEquals(Outcome.HOLD, after.outcome());
    assertEquals("Do not feed", after.word());
    assertEquals(Kind.HELD, after.kind());
    assertEquals("plan-ended", after.reasons().get(0).rule());
    assertEquals(
        "Use the policy policy-with-room-for-plans, and ask for a new plan: Nutrition consultant.",
        after.next().get(0));
    assertEquals(java.util.Set.of(Outcome.HOLD), after.possible());
  }

  private static Loaded<EffectivePolicy> changed(String from, String to) {
    return load(Shipped.text(Shipped.PLAN + "/policy.yaml").replace(from, to));
  }

  private static Loaded<EffectivePolicy> load(String text) {
    Policy below = Shipped.alone(Shipped.ROOM_FOR_PLANS);
    Policy plan =
        Shipped.sound(
            new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
                .load(
                    Shipped.sound(new YamlReader().read(SourceText.of("plan.yaml", text))),
                    List.of(below)));
    return Layering.combine(Shipped.words().vocabulary(), List.of(below, plan));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "is: 6.0 | is: 4.0 |",
        "is: 6.0 | is: 6.5 | plan.yaml:17:3: error: `ph-cut-off` is 6.5 here, outside what a plan may set [looser-than-floor]",
        "by: Nutrition consultant | by: Ward sister | plan.yaml:10:14: error: `ph-cut-off` needs the say of: Nutrition consultant [looser-than-floor]"
      })
  void onlyWithinItsBoundsAndByTheRoleThatIsNamed(String from, String to, String said) {
    String found =
        changed(from, to).diagnostics().stream()
            .map(d -> d.render().lines().findFirst().orElse(""))
            .collect(Collectors.joining("\n"));
    assertEquals(said == null ? "" : said, found);
  }

  /** A unit's policy is no plan: the same number there is refused as looser. */
  @Test
  void nobodyElseMaySetIt() {
    String unit =
        Shipped.text(Shipped.PLAN + "/policy.yaml")
            .replace("kind: plan", "kind: unit")
            .replaceAll("agreed: .*\\n", "");
    List<Diagnostic> said = load(unit).diagnostics();
    assertTrue(
        said.stream().anyMatch(d -> d.message().startsWith("`ph-cut-off` is 6 here and 5 in")),
        said::toString);
  }
}
