package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ProgramTest {
  @Test
  void versionIsOneLineOnTheOutput() {
    assertEquals(new Ran(0, "tidemark (unpackaged)\n", ""), Ran.with("--version"));
  }

  @Test
  void helpSaysWhatTheProgramDoesNotDo() {
    Ran ran = Ran.with("--help");
    assertEquals(0, ran.code());
    assertTrue(ran.out().contains("it stores no patient data"), ran::out);
    assertTrue(ran.out().contains("  3    The policy or its content is broken."), ran::out);
  }

  @Test
  void noVerbIsAWrongCommandLine() {
    assertEquals(new Ran(2, "", "Say what to do.\nTry: tidemark --help\n"), Ran.with());
  }

  @Test
  void aMistypedVerbGetsTheNearestOne() {
    assertEquals(
        new Ran(2, "", "`chek` is not known here.\nDid you mean: check\nTry: tidemark --help\n"),
        Ran.with("chek"));
  }

  @Test
  void anUnknownVerbIsAWrongCommandLine() {
    assertEquals(
        new Ran(2, "", "`reckon` is not known here.\nTry: tidemark --help\n"), Ran.with("reckon"));
  }
}
