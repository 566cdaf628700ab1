package org.tidemark.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidemark.cli.output.Console;

/**
 * A run of the program inside the test.
 *
 * @param code how it ended
 * @param out what it answered
 * @param err what it remarked
 */
record Ran(int code, String out, String err) {
  /** Runs without a terminal. */
  static Ran with(String... args) {
    return run(Optional.empty(), args);
  }

  /** Runs with a person who types these lines and then leaves. */
  static Ran typing(List<String> lines, String... args) {
    return run(Optional.of(new ArrayDeque<>(lines)), args);
  }

  private static Ran run(Optional<Deque<String>> typed, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    PrintWriter screen = new PrintWriter(out);
    Console console =
        new Console(screen, new PrintWriter(err), typed.map(lines -> () -> echoed(lines, screen)));
    int code = Program.run(console, args);
    return new Ran(code, out.toString(), err.toString());
  }

  /** What is typed stands on the screen, as on a real one. */
  private static @Nullable String echoed(Deque<String> lines, PrintWriter screen) {
    String line = lines.pollFirst();
    if (line != null) {
      screen.println(line);
    }
    return line;
  }
}
