package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidemark.architecture.Fence;
import org.tidemark.architecture.Fences;
import org.tidemark.architecture.SourceScan;

/** The fences hold for the program, and those of its own find what is planted. */
class CliFencesTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.tidemark.cli");
  private static final JavaClasses PLANTED =
      new ClassFileImporter().importPackages("org.tidemark.cli.fixture");

  static List<Fence> ofTheProgram() {
    return Fences.module("org.tidemark.cli", "/cli-architecture", "org.tidemark.cli.Main");
  }

  @ParameterizedTest
  @MethodSource("ofTheProgram")
  void holds(Fence fence) {
    fence.rule().check(PROGRAM);
  }

  @ParameterizedTest
  @CsvSource({
    "room output, fixture.command.Planted",
    "room command, org.tidemark.yaml.YamlReader",
    "no standard streams, java.lang.System.err",
    "packages say what they are for, org.tidemark.cli.fixture.output"
  })
  void findsWhatIsPlanted(String name, String expected) {
    Fence fence =
        Fences.module("org.tidemark.cli.fixture", "/cli-architecture", "nobody").stream()
            .filter(f -> f.name().equals(name))
            .findFirst()
            .orElseThrow();
    String report =
        String.join("\n", fence.rule().evaluate(PLANTED).getFailureReport().getDetails());
    assertTrue(report.contains(expected), () -> expected + " is not in: " + report);
  }

  @Test
  void theClassesAreSeen() {
    assertTrue(PROGRAM.size() > 6, () -> "only " + PROGRAM.size() + " classes are seen");
    assertTrue(PROGRAM.contain("org.tidemark.cli.Main"), "the way in is not seen");
  }

  @Test
  void theSourcesHaveNoFault() {
    SourceScan scan = SourceScan.of(Path.of("src/main/java"), 500);
    assertEquals(List.of(), scan.faults());
    assertTrue(SourceScan.p95(scan.methods()) <= 20, scan::longestMethods);
  }
}
