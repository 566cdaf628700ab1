package org.tidemark.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class LongWorkTest {
  private long now;

  @Test
  void saysHowFarItIsEveryTwoSecondsAndNothingAtTheEnd() {
    StringWriter err = new StringWriter();
    LongWork work = new LongWork(new PrintWriter(err), "cases", () -> now);
    at(1_999).accept(work, 1);
    at(2_000).accept(work, 2);
    at(3_999).accept(work, 3);
    at(4_000).accept(work, 4);
    at(9_000).accept(work, 5);
    assertEquals("2 of 5 cases\n4 of 5 cases\n", err.toString());
  }

  private java.util.function.BiConsumer<LongWork, Integer> at(long millis) {
    return (work, done) -> {
      now = millis * 1_000_000;
      work.done(done, 5);
    };
  }
}
