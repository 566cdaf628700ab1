package org.tidemark;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.guide.FilledArticle;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.GuidanceShelf;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.print.PolicyView;
import org.tidemark.print.PolicyViews;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.source.Suggestion;

/**
 * Keeps the last good guidance of each policy. What was kept for a policy with other numbers is
 * dropped: an old text is better than none, an old number is not.
 */
final class GuidanceDesk {
  /** Guidance, and the numbers that stand in it. */
  private record Kept(int edition, PolicyView numbers, GuidanceShelf shelf) {}

  private final GuidanceFiles files;
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final Map<String, Kept> kept = new HashMap<>();

  GuidanceDesk(GuidanceFiles files, Lazy<Loaded<Bibliography>> bibliography) {
    this.files = files;
    this.bibliography = bibliography;
  }

  /** The files as they are now, or what is wrong with them. */
  Loaded<GuidanceSearch> search(EffectivePolicy policy) {
    return PolicyGuidance.search(files, bibliography, policy);
  }

  /** One article in full, the policy's numbers in it. */
  Loaded<FilledArticle> article(EffectivePolicy policy, String name) {
    return PolicyGuidance.articles(files, bibliography, policy)
        .match(
            all ->
                all.stream()
                    .filter(a -> a.article().name().equals(name))
                    .findFirst()
                    .map(Loaded::good)
                    .orElseGet(() -> Loaded.broken(unknown(name, all))),
            Loaded::broken);
  }

  private static Diagnostic unknown(String name, List<FilledArticle> all) {
    SourceText typed = SourceText.of("article", name);
    List<String> known = all.stream().map(a -> a.article().name()).toList();
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_WORD,
            typed.span(0, name.length()),
            "no article is called `" + name + "`")
        .help(
            Suggestion.nearest(name, known)
                .map(near -> "did you mean `" + near + "`?")
                .orElse("search for it: tidemark find " + name));
  }

  /** The shelf of a policy, after the files were read again. */
  synchronized GuidanceShelf shelf(EffectivePolicy policy) {
    int edition = policy.header().edition();
    PolicyView numbers = PolicyViews.of(policy);
    Kept before = kept.get(policy.name());
    Kept now =
        before != null && before.edition() == edition && before.numbers().equals(numbers)
            ? before
            : new Kept(edition, numbers, new GuidanceShelf());
    kept.put(policy.name(), now);
    now.shelf().offer(search(policy));
    return now.shelf();
  }
}
