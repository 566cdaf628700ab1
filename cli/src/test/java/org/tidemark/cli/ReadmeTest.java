package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The sessions in the README are what the program prints. */
class ReadmeTest {
  private static final Pattern SESSION =
      Pattern.compile("```console\\n\\$ java -jar cli/target/tidemark\\.jar (.*)\\n([^`]*)```\\n");

  @Test
  void everySessionIsWhatTheProgramPrints() throws IOException {
    String readme = Files.readString(Path.of(Repo.file("README.md")), UTF_8);
    Matcher session = SESSION.matcher(readme);
    int sessions = 0;
    while (session.find()) {
      sessions++;
      assertEquals(session.group(2), run(session.group(1), session.group(2)), session.group(1));
    }
    assertEquals(6, sessions, "each session is found");
    assertEquals(6, readme.split("```console", -1).length - 1, "none is missed");
  }

  @Test
  void theFirstCommandsAreThere() throws IOException {
    String readme = Files.readString(Path.of(Repo.file("README.md")), UTF_8);
    assertTrue(
        readme.contains(
            "\nmvn -B -q package -DskipTests && java -jar cli/target/tidemark.jar check"
                + " --findings policies/examples/clear-check.yaml\nmvn -B -q verify\n"),
        "the two commands");
  }

  private static String run(String command, String shown) {
    List<String> args = new ArrayList<>();
    for (String word : command.split(" ", -1)) {
      args.add(word.startsWith("policies/") ? Repo.file(word) : word);
    }
    if (args.contains("check")) {
      args.addAll(List.of("--today", "2026-11-25"));
    }
    List<String> typed =
        shown.lines().filter(line -> line.startsWith("> ")).map(line -> line.substring(2)).toList();
    String[] words = args.toArray(String[]::new);
    return (typed.isEmpty() ? Ran.with(words) : Ran.typing(typed, words)).out();
  }
}
