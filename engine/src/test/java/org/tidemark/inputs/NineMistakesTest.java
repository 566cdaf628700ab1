package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.Marked;

/** One file, one run, every problem at its place, in whatever language the machine speaks. */
final class NineMistakesTest {
  @Test
  void everyProblemIsSaidInOneRun() {
    assertEquals(Bench.resource("nine-mistakes.said.txt"), said());
  }

  @Test
  void theMachinesLanguageChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab", "th-TH-u-nu-thai")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(Bench.resource("nine-mistakes.said.txt"), said(), tag);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String said() {
    String text = Marked.read(Bench.resource("nine-mistakes.yaml.txt"));
    return Bench.rendered(Bench.policy(SourceText.of("nine-mistakes.yaml", text)).diagnostics());
  }
}
