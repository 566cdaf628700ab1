package org.tidemark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlText;

class FenceTest {
  private final TemplateFiller filler = new TemplateFiller();

  @TestFactory
  Stream<DynamicTest> refused() {
    return PrintFixtures.cases("fence-refused.yaml")
        .map(c -> DynamicTest.dynamicTest(text(c, "case"), () -> refused(c)));
  }

  private void refused(YamlMap c) {
    YamlList says = (YamlList) c.entry("says").orElseThrow().value();
    List<String> expected = says.items().stream().map(i -> ((YamlText) i).text()).toList();
    assertEquals(
        expected, fill(text(c, "template")).match(filled -> List.of(filled), FenceTest::said));
  }

  @TestFactory
  Stream<DynamicTest> filled() {
    return PrintFixtures.cases("fence-filled.yaml")
        .map(
            c ->
                DynamicTest.dynamicTest(
                    text(c, "case"),
                    () ->
                        assertEquals(
                            text(c, "gives"),
                            fill(text(c, "template"))
                                .match(filled -> filled, d -> said(d).toString()))));
  }

  private Loaded<String> fill(String template) {
    SourceText source = SourceText.of("body.md", template);
    return filler.fill(source.span(0, source.text().length()), PrintFixtures.VIEW);
  }

  private static List<String> said(List<Diagnostic> problems) {
    return problems.stream().map(FenceTest::said).toList();
  }

  static String said(Diagnostic d) {
    return d.at().line() + ":" + d.at().column() + " " + d.code().id() + ": " + d.message();
  }

  private static String text(YamlMap map, String key) {
    return ((YamlText) map.entry(key).orElseThrow().value()).text();
  }
}
