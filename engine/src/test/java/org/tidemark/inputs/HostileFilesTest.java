package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlLimits;
import org.tidemark.yaml.YamlReader;

/**
 * Files that are made to hang a program end in an error. The limits are those of the documentation.
 *
 * <p>On a quiet machine every one of these ends within a second. What is held here is five seconds
 * of this thread's own work, so that a machine that is busy with other things passes as well; a
 * reader that hangs is stopped after a minute.
 */
final class HostileFilesTest {
  private static final Duration MOST = Duration.ofSeconds(5);
  private static final Duration HANGS = Duration.ofMinutes(1);

  @Test
  void theDefaultLimits() {
    assertEquals(new YamlLimits(400_000, 20, 40_000), YamlLimits.DEFAULT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[|300000|too-large",
        "{a: |60000|too-large",
        "`- `|100000|too-large",
        "a|400001|too-large",
        "`- a\n`|90000|too-large",
        "\u00A0x|150000|invisible-character",
        "\u00A0|150000|empty-file",
        "\u202E|399999|invisible-character",
        "`a1: b\nA: c\n`|30000|too-large",
        "`  key: x\n`|40000|too-large",
        "`\t `|150000|tab",
        "\u201C|399999|curly-quote",
        "`@\n`|150000|syntax",
        "`'`|399999|syntax",
        "`- &a x\n`|15000|anchor-or-alias",
        "`[x, `|39000|too-large",
        "`[\u201C,`|100000|too-large",
        "`k: @x\n`|40000|syntax",
      })
  void endsInAnError(String piece, int times, String code) {
    List<Diagnostic> said =
        assertTimeoutPreemptively(
            HANGS,
            () -> {
              long before = work();
              List<Diagnostic> all =
                  Bench.policy(SourceText.of("hostile.yaml", piece.repeat(times))).diagnostics();
              all.forEach(Diagnostic::render);
              Duration worked = Duration.ofNanos(work() - before);
              assertTrue(worked.compareTo(MOST) < 0, () -> "it took " + worked);
              return all;
            });
    List<String> codes = said.stream().map(d -> d.code().id()).toList();
    assertTrue(codes.contains(code), codes::toString);
  }

  private static long work() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  @Test
  void twentyLevelsAreRead() {
    String good = "[".repeat(20) + "]".repeat(20);
    String bad = "[".repeat(22) + "]".repeat(22);
    assertEquals(List.of(), new YamlReader().read(SourceText.of("a.yaml", good)).diagnostics());
    assertEquals(1, new YamlReader().read(SourceText.of("a.yaml", bad)).diagnostics().size());
  }
}
