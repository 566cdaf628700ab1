package org.tidemark.report;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.decide.Grounds;
import org.tidemark.decide.Least;
import org.tidemark.decide.Observation;

/** What forces an answer, and what would let it proceed, as text. */
final class LeastText {
  static final String NOT_WORKED_OUT = "This could not be worked out in the time given.";

  static final String ENTER_WHAT_IS_FOUND = "Enter what is found, never what is wanted.";

  private final Sheet sheet;

  LeastText(Sheet sheet) {
    this.sheet = sheet;
  }

  void write(Grounds grounds) {
    grounds.forcedBy().ifPresent(this::forcedBy);
    grounds.wouldProceed().ifPresent(this::wouldProceed);
  }

  private void forcedBy(Least least) {
    sheet.heading("Enough for this answer, whatever else may be found");
    if (least instanceof Least.Found found && found.findings().isEmpty()) {
      sheet.hanging("  ", "Nothing. The policy answers so in every case.");
    } else {
      write(least, NOT_WORKED_OUT);
    }
  }

  private void wouldProceed(Least least) {
    sheet.heading("What would have to be found for it to proceed");
    write(least, "Nothing that can still be found out would let it proceed.");
    if (least instanceof Least.Found) {
      sheet.hanging("  ", ENTER_WHAT_IS_FOUND);
    }
  }

  private void write(Least least, String none) {
    if (least instanceof Least.Found found) {
      sheet.bulleted(found.findings().stream().map(LeastText::sentence).toList());
    } else {
      sheet.hanging("  ", least instanceof Least.NoneExists ? none : NOT_WORKED_OUT);
    }
  }

  static String sentence(Observation each) {
    List<String> words = new ArrayList<>(List.of(each.called(), each.found() + "."));
    each.renew().ifPresent(words::add);
    return String.join(" ", words);
  }
}
