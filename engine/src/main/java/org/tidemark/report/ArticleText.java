package org.tidemark.report;

import java.util.List;
import org.tidemark.guide.Article;
import org.tidemark.guide.FilledArticle;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Days;
import org.tidemark.print.MarkdownPage;
import org.tidemark.source.Located;

/**
 * One article of the guidance in full, as text: what it says, where that comes from, and until when
 * it counts.
 */
public final class ArticleText {
  private ArticleText() {}

  public static String of(FilledArticle filled, EffectivePolicy policy, Bibliography sources) {
    Article article = filled.article();
    Sheet sheet = new Sheet();
    sheet.paragraph((article.actNow() ? "!! ACT NOW: " : "") + article.title());
    sheet.blank();
    new MarkdownPage().text(filled.markdown()).strip().lines().forEach(sheet::line);
    sheet.heading("Sources");
    article
        .sources()
        .forEach(id -> sheet.hanging("  ", id.value() + ": " + publication(id.value(), sources)));
    sheet.heading("This text");
    sheet.hanging(
        "  ",
        "Text of "
            + article.origin()
            + ", numbers of "
            + policy.name()
            + ", edition "
            + policy.header().edition()
            + ".");
    article.reviewBy().ifPresent(day -> sheet.hanging("  ", "Review by " + Days.of(day) + "."));
    sheet.hanging("  ", "Your hospital's policy and licensed practice decide.");
    List<String> others = article.seeAlso().stream().map(Located::value).toList();
    if (!others.isEmpty()) {
      sheet.hanging("  ", "See also: " + String.join(", ", others) + ".");
    }
    return sheet.toString();
  }

  static String publication(String id, Bibliography sources) {
    return sources
        .entry(id)
        .map(
            e ->
                e.publication()
                    + e.year()
                        .filter(y -> !e.publication().contains(y))
                        .map(y -> " " + y + ".")
                        .orElse(""))
        .orElse("not in the bibliography");
  }
}
