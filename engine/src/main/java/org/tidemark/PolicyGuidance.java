package org.tidemark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidemark.guide.Article;
import org.tidemark.guide.Citations;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.Guidance;
import org.tidemark.guide.GuidanceIndex;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.PolicyContext;
import org.tidemark.guide.Population;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Worded;
import org.tidemark.print.PolicyView;
import org.tidemark.print.PolicyViews;
import org.tidemark.print.TemplateFiller;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;

/** Writes a policy's numbers into the guidance and makes it searchable. */
final class PolicyGuidance {
  private final TemplateFiller filler = new TemplateFiller();
  private final Problems problems = new Problems();
  private final Guidance guidance;
  private final PolicyView view;

  private PolicyGuidance(Guidance guidance, PolicyView view) {
    this.guidance = guidance;
    this.view = view;
  }

  static Loaded<GuidanceSearch> search(
      GuidanceFiles files, Lazy<Loaded<Bibliography>> bibliography, EffectivePolicy policy) {
    return with(files, policy, all -> all.search(bibliography, policy));
  }

  /** The articles themselves, the policy's numbers in them. */
  static Loaded<List<FilledArticle>> articles(
      GuidanceFiles files, Lazy<Loaded<Bibliography>> bibliography, EffectivePolicy policy) {
    return with(files, policy, all -> all.articles(bibliography));
  }

  private static <T> Loaded<T> with(
      GuidanceFiles files, EffectivePolicy policy, Function<PolicyGuidance, Loaded<T>> use) {
    Loaded<Guidance> read = files.read();
    return read.match(
        guidance -> {
          PolicyGuidance all = new PolicyGuidance(guidance, PolicyViews.of(policy));
          all.problems.addAll(read.diagnostics());
          return use.apply(all);
        },
        Loaded::broken);
  }

  private Loaded<List<FilledArticle>> articles(Lazy<Loaded<Bibliography>> bibliography) {
    cite(bibliography);
    List<FilledArticle> filled = new ArrayList<>();
    guidance.articles().forEach(article -> fill(article, filled));
    return problems.conclude(() -> List.copyOf(filled));
  }

  private Loaded<GuidanceSearch> search(
      Lazy<Loaded<Bibliography>> bibliography, EffectivePolicy policy) {
    return articles(bibliography).match(filled -> search(filled, policy), Loaded::broken);
  }

  private Loaded<GuidanceSearch> search(List<FilledArticle> filled, EffectivePolicy policy) {
    return GuidanceIndex.of(filled, guidance.words())
        .match(
            index -> Loaded.good(index.search(context(policy)), problems.sorted()), Loaded::broken);
  }

  /**
   * Only a hospital's own articles: the citations of those that are shipped were looked up then.
   */
  private void cite(Lazy<Loaded<Bibliography>> bibliography) {
    List<Article> own =
        guidance.articles().stream()
            .filter(a -> !a.origin().equals(GuidanceFiles.SHIPPED))
            .toList();
    if (!own.isEmpty()) {
      Set<String> known =
          problems.keep(bibliography.get(), () -> new Bibliography(List.of())).entries().stream()
              .map(Bibliography.Entry::id)
              .collect(Collectors.toSet());
      problems.addAll(Citations.unknown(own, known));
    }
  }

  private void fill(Article article, List<FilledArticle> all) {
    Loaded<String> filled = filler.fill(article.body().span(), view);
    problems.addAll(filled.diagnostics());
    filled.match(text -> all.add(new FilledArticle(article, text)), broken -> false);
  }

  private static PolicyContext context(EffectivePolicy policy) {
    PolicyContext context =
        PolicyContext.of(policy.name(), Integer.toString(policy.header().edition()))
            .answers(new AtThisNumber(policy)::says)
            .populations(populations(policy));
    return policy
        .value("ph-cut-off")
        .flatMap(PolicyValue::number)
        .map(context::cutOff)
        .orElse(context);
  }

  private static List<Population> populations(EffectivePolicy policy) {
    return policy.header().scope().covers().stream()
        .filter(cover -> cover.finding().equals("population"))
        .flatMap(cover -> cover.options().stream())
        .flatMap(option -> Worded.find(Population.class, option).stream())
        .toList();
  }
}
