package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** CP-26: a card's fingerprint comes from what the policy means, and not from its bytes. */
class FingerprintTest {
  private static final String DEMO =
      "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml";

  @TempDir private Path folder = Path.of("target");

  private String fingerprint(String policy) throws IOException {
    Path file = folder.resolve("policy.yaml");
    Files.writeString(file, policy, UTF_8);
    Ran ran =
        Ran.with(
            "card",
            "before-first-use",
            "--policy",
            file.toString(),
            "--today",
            "2026-11-25",
            "--replace",
            "--out",
            folder.resolve("card.html").toString());
    assertEquals(0, ran.code(), ran::err);
    String html = Files.readString(folder.resolve("card.html"), UTF_8);
    Matcher found = Pattern.compile("class=\"seal\">([^<]+)<").matcher(html);
    assertTrue(found.find(), html);
    return found.group(1);
  }

  private static String changed(String text, String line, String other) {
    assertTrue(text.contains(line), line);
    return text.replace(line, other);
  }

  @Test
  void meaningAndNotBytes() throws IOException {
    String text = Files.readString(Path.of(Repo.file(DEMO)), UTF_8);
    String was = fingerprint(text);
    assertEquals(was, fingerprint(text.replace("\n", "\r\n")), "line ends");
    assertEquals(was, fingerprint("# A remark.\n" + text), "a remark");
    assertEquals(was, fingerprint(changed(text, "is: 5.0\n", "is: 5.00\n")), "5.0 and 5.00");
    String lines = "kind: hospital\ntitle: Nasogastric tubes in adults\n";
    String turned = "title: Nasogastric tubes in adults\nkind: hospital\n";
    assertEquals(was, fingerprint(changed(text, lines, turned)), "the order of the fields");
    assertNotEquals(was, fingerprint(changed(text, "is: 5.0\n", "is: 4.5\n")), "a limit");
    assertNotEquals(
        was, fingerprint(changed(text, "who: Nutrition nurse", "who: Feeding nurse")), "a text");
  }
}
