package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void versionIsOneLineOnTheOutput() {
    assertEquals(0, run("--version"));
    assertEquals("tidemark (unpackaged)", out.toString().strip());
    assertEquals("", err.toString());
  }

  @Test
  void helpSaysWhatTheProgramDoesNotDo() {
    assertEquals(0, run("--help"));
    assertTrue(out.toString().contains("stores no patient data"), out::toString);
    assertTrue(
        out.toString().contains("  3    The policy or its content is broken."), out::toString);
  }

  @Test
  void noVerbIsAWrongCommandLine() {
    assertEquals(2, run());
    assertTrue(err.toString().startsWith("Say what to do."), err::toString);
    assertEquals("", out.toString());
  }

  @Test
  void anUnknownVerbIsAWrongCommandLine() {
    assertEquals(2, run("reckon"));
    assertTrue(err.toString().contains("reckon"), err::toString);
    assertEquals("", out.toString());
  }
}
