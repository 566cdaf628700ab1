package org.tidemark.report;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.tidemark.guide.Article;
import org.tidemark.guide.FilledArticle;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Located;

/** One article of the guidance in full, as JSON. */
public final class ArticleJson {
  private ArticleJson() {}

  public static String of(
      FilledArticle filled,
      EffectivePolicy policy,
      Bibliography sources,
      List<Diagnostic> remarks) {
    Article article = filled.article();
    return Json.object(
        json -> {
          json.text("article", article.name());
          json.text("title", article.title());
          json.flag("act-now", article.actNow());
          json.text("markdown", filled.markdown().strip());
          json.objects("sources", article.sources(), (one, id) -> source(one, id, sources));
          json.text("review-by", article.reviewBy().map(LocalDate::toString));
          json.text("origin", article.origin());
          json.text("policy", policy.name());
          json.number("edition", policy.header().edition());
          json.texts("see-also", article.seeAlso().stream().map(Located::value).toList());
          json.objects("remarks", remarks, DiagnosticsJson::problem);
        });
  }

  private static void source(Json json, Located<String> id, Bibliography sources)
      throws IOException {
    json.text("id", id.value());
    json.text("publication", ArticleText.publication(id.value(), sources));
  }
}
