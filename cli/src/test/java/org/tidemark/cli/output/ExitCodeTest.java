package org.tidemark.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExitCodeTest {
  @Test
  void numbersAreFixedForGood() {
    assertEquals(
        List.of(0, 1, 2, 3, 4, 5, 6, 70),
        Arrays.stream(ExitCode.values()).map(ExitCode::number).toList());
  }
}
