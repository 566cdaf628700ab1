package org.tidemark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.guide.Article;
import org.tidemark.guide.ArticleReader;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.GuidanceIndex;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.PolicyContext;
import org.tidemark.guide.Words;
import org.tidemark.guide.WordsReader;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.PolicyValue;
import org.tidemark.print.PolicyView;
import org.tidemark.print.PolicyViews;
import org.tidemark.print.TemplateFiller;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;

/** Reads the shipped guidance, writes a policy's numbers into it, and makes it searchable. */
final class Guidance {
  private static final String ORIGIN = "tidemark";

  private final TemplateFiller filler = new TemplateFiller();
  private final ArticleReader reader = new ArticleReader(ORIGIN);
  private final Problems problems = new Problems();
  private final PolicyView view;

  private Guidance(PolicyView view) {
    this.view = view;
  }

  static Loaded<GuidanceSearch> search(Resources resources, EffectivePolicy policy) {
    Guidance guidance = new Guidance(PolicyViews.of(policy));
    List<FilledArticle> articles = guidance.fill(resources.all("content/guidance", ".md"));
    Words words =
        guidance.problems.keep(
            resources
                .text("content/words/words.yaml")
                .match(text -> new WordsReader().read(text), Loaded::broken),
            () -> Words.NONE);
    if (guidance.problems.anyError()) {
      return Loaded.broken(guidance.problems.sorted());
    }
    return GuidanceIndex.of(articles, words)
        .match(index -> Loaded.good(index.search(context(policy))), Loaded::broken);
  }

  private static PolicyContext context(EffectivePolicy policy) {
    PolicyContext context =
        PolicyContext.of(policy.name(), Integer.toString(policy.header().edition()));
    return policy
        .value("ph-cut-off")
        .flatMap(PolicyValue::number)
        .map(context::cutOff)
        .orElse(context);
  }

  private List<FilledArticle> fill(Loaded<List<SourceText>> files) {
    List<FilledArticle> all = new ArrayList<>();
    for (SourceText file : problems.keep(files, List::of)) {
      Loaded<Article> article = reader.read(file);
      problems.addAll(article.diagnostics());
      article.match(Optional::of, broken -> Optional.<Article>empty()).ifPresent(a -> fill(a, all));
    }
    return all;
  }

  private void fill(Article article, List<FilledArticle> all) {
    Loaded<String> filled = filler.fill(article.body().span(), view);
    problems.addAll(filled.diagnostics());
    filled.match(text -> all.add(new FilledArticle(article, text)), broken -> false);
  }
}
