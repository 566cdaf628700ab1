package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it was built: the jar with its libraries beside it, and the launcher. */
class BuiltProgramIT {
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private static final Path BUILT = Path.of("target").toAbsolutePath();

  @TempDir private Path folder = Path.of("target");

  /** Everything goes through files, so that no pipe can fill up and stop the program. */
  private Ran start(List<String> program, String... args) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(program);
    words.addAll(List.of(args));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder start = new ProcessBuilder(words);
    Map<String, String> settings = start.environment();
    settings.put("LANG", "C");
    settings.put("LC_ALL", "C");
    settings.put("XDG_CACHE_HOME", folder.toString());
    settings.put("JAVA_HOME", System.getProperty("java.home"));
    int code = start.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
    return new Ran(code, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  private static List<String> jar() {
    return List.of(JAVA, "-jar", BUILT.resolve("tidemark.jar").toString());
  }

  private static List<String> launcher() {
    return List.of("sh", BUILT.resolve("tidemark").toString());
  }

  private static String[] clearCheck(String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("check", "--findings", Repo.example("clear-check"), "--today", "2026-11-25"));
    args.addAll(List.of(more));
    return args.toArray(String[]::new);
  }

  @Test
  void theJarAnswers() throws IOException, InterruptedException {
    Ran ran = start(jar(), clearCheck("--json"));
    assertEquals(0, ran.code(), ran::err);
    assertEquals("", ran.err());
    assertEquals("proceed", Repo.json(ran.out()).path("outcome").asText());
  }

  @Test
  void theLauncherAnswersTheSameOnItsFirstRunAndOnItsSecond()
      throws IOException, InterruptedException {
    Ran first = start(launcher(), clearCheck());
    assertEquals(new Ran(0, Repo.golden("check/clear-check.txt"), ""), first);
    assertEquals(1, archives(), "the first run keeps an archive");
    assertEquals(first, start(launcher(), clearCheck()));
  }

  private int archives() throws IOException {
    int found = 0;
    try (var files = Files.newDirectoryStream(folder.resolve("tidemark"), "*-check-*.jsa")) {
      for (Path file : files) {
        found += Files.size(file) > 0 ? 1 : 0;
      }
    }
    return found;
  }

  @Test
  void aWrongVerb() throws IOException, InterruptedException {
    Ran said =
        new Ran(2, "", "`chek` is not known here.\nDid you mean: check\nTry: tidemark --help\n");
    assertEquals(said, start(jar(), "chek"));
    assertEquals(said, start(launcher(), "chek"));
  }

  @Test
  void aPlainMachineShowsNoQuestionMarkForASign() throws IOException, InterruptedException {
    Ran ran = start(jar(), "policies", "--today", "2026-11-25");
    assertEquals(new Ran(0, Repo.golden("policies.txt"), ""), ran);
    assertTrue(!ran.out().contains("?"), ran::out);
  }
}
