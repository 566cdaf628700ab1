package org.tidemark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.apache.velocity.exception.VelocityException;
import org.apache.velocity.runtime.parser.ParseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What Velocity itself still refuses, should a template ever slip past the fence. */
class SecondWallTest {
  private final VelocityRoom room = new VelocityRoom();

  private String fill(String template) throws ParseException {
    return room.fill(
        room.parse("body.md", template),
        TemplateKind.PAGE,
        Map.of("values", Map.of("x", "<5"), "list", List.of("a", "b")));
  }

  @Test
  void namesAreFilledAndEscaped() throws ParseException {
    assertEquals("&lt;5 ab", fill("$values.x #foreach($i in $list)$i#end"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "$values.class",
        "$values.x.class",
        "$values.getClass()",
        "$values.x.length()",
        "$values.nothing",
        "$nothing",
        "$!nothing",
        "$list.get(0)",
        "$list[0]",
        "#set($values.x = 1)",
        "#evaluate('x')",
        "#include('pom.xml')",
        "#parse('pom.xml')",
        "#unknown('x')",
        "#foreach($i in $values)$i#end",
        "#foreach($i in $values.x)$i#end"
      })
  void nothingElseWorks(String template) {
    assertThrows(VelocityException.class, () -> fill(template));
  }
}
