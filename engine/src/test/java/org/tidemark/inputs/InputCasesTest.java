package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.tidemark.source.Loaded;
import org.tidemark.testkit.InputCase;
import org.tidemark.testkit.Underlined;

/** Every case of every case file: what is read, and exactly what is said about it. */
final class InputCasesTest {
  @TestFactory
  Stream<DynamicContainer> everyFile() {
    return CaseFiles.NAMES.stream()
        .map(
            name ->
                DynamicContainer.dynamicContainer(
                    name, CaseFiles.cases(name).stream().map(InputCasesTest::test)));
  }

  private static DynamicTest test(InputCase c) {
    return DynamicTest.dynamicTest(c.name(), () -> check(c));
  }

  private static void check(InputCase c) {
    Loaded<String> read = Bench.read(c);
    List<Underlined> expected = Underlined.parse(c.part("says"), Bench.firstLine(c));
    Underlined.assertSaid(expected, read.diagnostics());
    if (c.parts().containsKey("reads")) {
      assertEquals(c.part("reads").strip(), read.match(tree -> tree, errors -> "broken"));
    }
  }
}
