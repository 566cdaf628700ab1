package org.tidemark.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The fences hold for the engine, and each finds the violation planted for it. */
class EngineFencesTest {
  private static final JavaClasses ENGINE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.tidemark");
  private static final JavaClasses PLANTED =
      new ClassFileImporter().importPackages("org.tidemark.fixture");
  private static final Map<String, List<String>> EXPECTED =
      Tables.read("/architecture/planted.txt");

  static List<Fence> ofTheEngine() {
    return Fences.engine("org.tidemark");
  }

  static List<Fence> ofTheFixture() {
    return Fences.engine("org.tidemark.fixture");
  }

  @ParameterizedTest
  @MethodSource("ofTheEngine")
  void holds(Fence fence) {
    fence.rule().check(ENGINE);
  }

  @ParameterizedTest
  @MethodSource("ofTheFixture")
  void findsWhatIsPlanted(Fence fence) {
    // The details only: the rule's own text names what it forbids.
    String report =
        String.join("\n", fence.rule().evaluate(PLANTED).getFailureReport().getDetails());
    for (String word : EXPECTED.getOrDefault(fence.name(), List.of())) {
      assertTrue(report.contains(word), () -> word + " is not in: " + report);
    }
  }

  @Test
  void everyFenceHasItsPlant() {
    assertEquals(
        ofTheFixture().stream().map(Fence::name).collect(Collectors.toSet()), EXPECTED.keySet());
    EXPECTED.forEach((fence, words) -> assertTrue(!words.isEmpty(), fence));
  }

  @Test
  void theClassesAreSeen() {
    assertTrue(
        ENGINE.size() > 250, () -> "only " + ENGINE.size() + " classes of the engine are seen");
    assertTrue(
        ENGINE.stream().noneMatch(c -> c.getName().contains(".fixture.")), "fixtures are in");
  }
}
