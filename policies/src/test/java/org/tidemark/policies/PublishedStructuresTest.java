package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.trial.Trial;
import org.tidemark.trial.TrialReport;
import org.tidemark.yaml.YamlReader;

/**
 * Structures that somebody published, as policies: each loads, is reported by value where its page
 * overlaps or leaves a gap, and answers as its page does on both sides of every limit. The README
 * beside each names the publication, and what the language could not say of it.
 */
class PublishedStructuresTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  static Stream<String> structures() {
    return Shipped.STRUCTURES.stream();
  }

  private static String folder(String structure) {
    return structure.substring(structure.indexOf('/') + 1);
  }

  @ParameterizedTest
  @MethodSource("structures")
  void everyCasePassesAndEveryRuleAndLimitIsReached(String structure) {
    Trial trial = Trial.of(Shipped.policy(structure), Shipped.words());
    TrialReport report =
        Shipped.sound(trial.report(Shipped.cases(structure), TODAY, (done, of) -> {}));
    assertEquals(List.of(), report.failures());
    assertEquals(List.of(), report.coverage().uncoveredRules());
    assertEquals(List.of(), report.coverage().uncoveredReadings());
  }

  @ParameterizedTest
  @MethodSource("structures")
  void loadingReportsWhatThePageGetsWrongAndNothingElse(String structure) {
    List<String> expected = new ArrayList<>();
    for (String line : Shipped.text("published/reports.csv").lines().toList()) {
      String[] cells = line.split(" \\| ", -1);
      if (cells[0].strip().equals(folder(structure))) {
        expected.add(cells[1].strip() + ": " + cells[2].strip());
      }
    }
    Policy policy = Shipped.alone(structure);
    Loaded<EffectivePolicy> loaded =
        Layering.combine(Shipped.words().vocabulary(), List.of(policy));
    List<String> found =
        loaded.diagnostics().stream()
            .filter(d -> d.severity() != Severity.NOTICE || d.code() == DiagnosticCode.GAP)
            .map(d -> d.code().id() + ": " + d.message())
            .toList();
    assertEquals(Set.copyOf(expected), Set.copyOf(found));
    assertEquals(expected.size(), found.size(), "each once");
  }

  @ParameterizedTest
  @MethodSource("structures")
  void theSourceStandsBesideIt(String structure) {
    String readme = Shipped.text(structure + "/README.md");
    boolean practice = structure.startsWith("practice/");
    assertTrue(
        readme.contains(practice ? "Common practice, no source" : "**Source.** "), structure);
    assertTrue(readme.contains("What the language could not say of it."), structure);
    assertTrue(readme.contains("not offered to users"), structure);
    assertEquals(folder(structure), Shipped.policy(structure).name());
  }

  /** Nothing of them is offered: the catalogue that users choose from names none. */
  @Test
  void noneIsOfferedToUsers() {
    String offered = Shipped.text("policies/catalogue.yaml");
    structures().forEach(s -> assertTrue(!offered.contains(folder(s)), s));
  }

  private static String cutOff(Policy policy) {
    return policy.values().stream()
        .filter(v -> v.name().equals("ph-cut-off"))
        .findFirst()
        .flatMap(PolicyValue::number)
        .orElseThrow()
        .toPlainString();
  }

  /** Common practice, no source: at most 5 in an adult and at most 4 in a child. */
  @Test
  void twoPopulationsShareNothingByInheritance() {
    Policy adult = Shipped.alone("practice/practice-adult");
    Policy child = Shipped.alone("practice/practice-child");
    assertEquals("5", cutOff(adult));
    assertEquals("4", cutOff(child));
    String onTop =
        Shipped.text("practice/practice-child/policy.yaml")
            .replace("builds-on: nothing", "builds-on: practice-adult")
            .replaceAll("(?s)\nvalues:.*", "\nquestions: {}\n");
    PolicyLoader loader = new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography());
    Policy inheriting =
        Shipped.sound(
            loader.load(
                Shipped.sound(new YamlReader().read(SourceText.of("child.yaml", onTop))),
                List.of(adult)));
    Loaded<EffectivePolicy> refused =
        Layering.combine(Shipped.words().vocabulary(), List.of(adult, inheriting));
    assertEquals(
        List.of("`population` covers child, and the layer below covers adult"),
        refused.diagnostics().stream()
            .filter(d -> d.code() == DiagnosticCode.OUTSIDE_FLOOR_SCOPE)
            .map(Diagnostic::message)
            .toList());
  }
}
