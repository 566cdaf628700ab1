package org.tidemark.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceScanTest {
  private static final Path PLANTED = Path.of("src/test/resources/architecture/planted");
  private static final SourceScan MAIN = SourceScan.of(Path.of("src/main/java"), 500);
  private static final SourceScan TESTS = SourceScan.of(Path.of("src/test/java"), 600);

  @Test
  void whatIsPlantedIsFoundWithItsPlace() {
    String careless = "org/tidemark/decide/Careless.java:";
    assertEquals(
        List.of(
            "org/tidemark/decide/package-info.java: no sentence says what the package is for",
            careless + "6: a double where limits are compared",
            careless + "9: catches RuntimeException; a catch-all hides an error that must be seen",
            careless + "11: catches Exception; a catch-all hides an error that must be seen",
            careless + "13: catches Error; a catch-all hides an error that must be seen",
            careless + "15: catches Throwable; a catch-all hides an error that must be seen",
            careless + "89: sixtyOneLines has 61 lines; a method has at most 60"),
        SourceScan.of(PLANTED, 500).faults());
  }

  @Test
  void aFileOfOneLineTooManyIsFound(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("Long.java"), "//\n".repeat(501), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("Short.java"), "//\n".repeat(500), StandardCharsets.UTF_8);
    assertEquals(
        List.of("Long.java: 501 lines; a file has at most 500"),
        SourceScan.of(folder, 500).faults());
  }

  @Test
  void theSourcesHaveNoFault() {
    assertEquals(List.of(), MAIN.faults());
    assertTrue(MAIN.files().size() > 50, () -> "only " + MAIN.files().size() + " files are seen");
  }

  @Test
  void testsStayReadableToo() {
    assertEquals(
        List.of(), TESTS.faults().stream().filter(f -> f.contains("has at most")).toList());
  }

  @Test
  void mostMethodsAndFilesAreSmall() {
    assertTrue(
        SourceScan.p95(MAIN.methods()) <= 20,
        () -> "one method in twenty is over 20 lines; the longest are " + MAIN.longestMethods());
    assertTrue(SourceScan.p95(MAIN.files()) <= 300, "one file in twenty is over 300 lines");
  }

  @Test
  void nineteenOfTwentyAreWithinTheP95() {
    List<SourceScan.Measure> twenty =
        LongStream.rangeClosed(1, 20).mapToObj(n -> new SourceScan.Measure("", n)).toList();
    assertEquals(19, SourceScan.p95(twenty));
  }
}
