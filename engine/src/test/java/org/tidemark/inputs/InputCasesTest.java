package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

  /**
   * A Turkish i, a German comma, Arabic digits: the machine's language must not change what is read
   * or said.
   */
  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab"})
  void theSameInEveryLanguage(String tag) {
    Locale before = Locale.getDefault();
    List<InputCase> cases = CaseFiles.all();
    List<String> here = cases.stream().map(InputCasesTest::said).toList();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertEquals(here, cases.stream().map(InputCasesTest::said).toList());
    } finally {
      Locale.setDefault(before);
    }
  }

  /**
   * What is said, and what is read; places have no text of their own, only a number in the heap.
   */
  private static String said(InputCase c) {
    Loaded<String> read = Bench.read(c);
    String value = read.match(tree -> tree, errors -> "broken");
    return value.replaceAll("@[0-9a-f]+", "@") + "\n" + Bench.rendered(read.diagnostics());
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
