package org.tidemark.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tidemark.decide.Least;
import org.tidemark.decide.Need;
import org.tidemark.decide.Routes;
import org.tidemark.decide.ToAsk;
import org.tidemark.decide.Way;
import org.tidemark.model.Vocabulary;

/** How an unfinished case can be settled, as text. */
final class RoutesText {
  private final Sheet sheet;
  private final Vocabulary vocabulary;

  RoutesText(Sheet sheet, Vocabulary vocabulary) {
    this.sheet = sheet;
    this.vocabulary = vocabulary;
  }

  void write(Routes routes) {
    sheet.heading("Fewest to find out for the answer to be settled, whatever they show");
    if (routes.fewest() instanceof ToAsk.Found found) {
      fewest(found.needs());
    } else {
      sheet.hanging(
          "  ",
          routes.fewest() instanceof ToAsk.NoneExists
              ? "None: a reading near a limit can leave it open, since it may be off."
              : LeastText.NOT_WORKED_OUT);
    }
    routes.ways().forEach(this::way);
    if (!routes.ways().isEmpty()) {
      sheet.hanging("  ", LeastText.ENTER_WHAT_IS_FOUND);
    }
  }

  private void fewest(List<Need> needs) {
    if (needs.isEmpty()) {
      sheet.hanging("  ", "Nothing. The answer is settled.");
      return;
    }
    Set<String> open = new HashSet<>();
    needs.forEach(need -> open.add(need.finding()));
    sheet.numbered(needs.stream().map(need -> need(need, open)).toList());
  }

  private String need(Need need, Set<String> open) {
    boolean hangs =
        vocabulary.require(need.finding()).applies().stream()
            .anyMatch(parent -> open.contains(parent.finding()));
    return (hangs ? "Where it applies: " : "") + DecisionText.need(need);
  }

  private void way(Way way) {
    sheet.heading("One way to: " + way.word());
    if (way.fewest() instanceof Least.Found found) {
      sheet.bulleted(found.findings().stream().map(LeastText::sentence).toList());
    } else {
      sheet.hanging(
          "  ",
          way.fewest() instanceof Least.NoneExists
              ? "None that is certain: a reading may be off by too much for that."
              : LeastText.NOT_WORKED_OUT);
    }
  }
}
