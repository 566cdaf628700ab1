package org.tidemark.report;

import java.util.List;
import org.tidemark.guide.Found;
import org.tidemark.guide.Hit;

/** What a search of the guidance found, as text. */
public final class HitsText {
  private HitsText() {}

  public static String of(Found found) {
    Sheet sheet = new Sheet();
    found
        .reading()
        .corrections()
        .forEach(c -> sheet.line("`" + c.typed() + "` was read as `" + c.taken() + "`."));
    found.note().ifPresent(sheet::paragraph);
    found.atThisNumber().ifPresent(says -> sheet.paragraph(says).blank());
    List<Hit> hits = found.hits();
    for (int i = 0; i < hits.size(); i++) {
      if (i > 0) {
        sheet.blank();
      }
      hit(sheet, Integer.toString(i + 1), hits.get(i));
    }
    return sheet.toString();
  }

  private static void hit(Sheet sheet, String number, Hit hit) {
    sheet.hanging(number + "  ", (hit.actNow() ? "!! ACT NOW: " : "") + hit.title());
    sheet.hanging("   ", hit.snippet().marked("*", "*"));
    sheet.hanging(
        "   ", "[" + where(hit) + "; text of " + hit.origin() + "; " + numbers(hit) + "]");
    hit.reasons().forEach(reason -> sheet.hanging("   - ", reason));
  }

  private static String numbers(Hit hit) {
    return "numbers of " + hit.policy() + ", edition " + hit.edition();
  }

  private static String where(Hit hit) {
    return hit.section().isEmpty() ? hit.article() : hit.article() + ", " + hit.section();
  }
}
