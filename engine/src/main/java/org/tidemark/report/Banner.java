package org.tidemark.report;

import java.util.List;
import java.util.Locale;
import org.tidemark.model.Outcome;

/** The answer, big: its word, and a shape of plain characters that no other answer has. */
final class Banner {
  private static final List<String> ARROW = List.of("  \\\\    ", "   >>   ", "  //    ");
  private static final List<String> BARS = List.of("  || || ", "  || || ", "  || || ");
  private static final List<String> TRIANGLE = List.of("   /\\   ", "  /!!\\  ", " /____\\ ");

  private Banner() {}

  static void on(Sheet sheet, Outcome outcome, String word) {
    List<String> shape = shape(outcome);
    sheet.line(shape.get(0));
    sheet.line(shape.get(1) + "  " + word.toUpperCase(Locale.ROOT));
    sheet.line(shape.get(2));
  }

  private static List<String> shape(Outcome outcome) {
    return switch (outcome) {
      case PROCEED -> ARROW;
      case HOLD -> BARS;
      case ESCALATE -> TRIANGLE;
    };
  }
}
