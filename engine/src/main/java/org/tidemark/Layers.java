package org.tidemark;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.Acceptances;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Policy;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** Gathers a policy and everything below it, and loads them from the lowest up. */
final class Layers {
  private final Vocabulary vocabulary;
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final PolicyFinder finder;
  private final Problems problems;

  Layers(
      Vocabulary vocabulary,
      Lazy<Loaded<Bibliography>> bibliography,
      PolicyFinder finder,
      Problems problems) {
    this.vocabulary = vocabulary;
    this.bibliography = bibliography;
    this.finder = finder;
    this.problems = problems;
  }

  Loaded<EffectivePolicy> combine(Copy top) {
    List<Copy> copies = lowestFirst(top);
    List<Policy> layers = new ArrayList<>();
    for (Copy copy : copies) {
      if (!problems.anyError()) {
        load(copy, layers);
      }
    }
    if (problems.anyError()) {
      copies.forEach(copy -> problems.addAll(copy.said()));
      return Loaded.broken(problems.sorted());
    }
    Loaded<EffectivePolicy> whole = Layering.combine(vocabulary, layers);
    problems.addAll(whole.diagnostics());
    return whole.match(
        policy -> Acceptances.settle(policy.layers(), problems.conclude(() -> policy)),
        errors -> Loaded.broken(problems.sorted()));
  }

  private List<Copy> lowestFirst(Copy top) {
    List<Copy> copies = new ArrayList<>(List.of(top));
    Set<String> seen = new LinkedHashSet<>();
    PolicyLoader.named(top.tree()).map(Located::value).ifPresent(seen::add);
    Copy copy = top;
    Optional<Located<String>> next = PolicyLoader.buildsOn(copy.tree());
    while (next.isPresent()) {
      Optional<Copy> below =
          seen.add(next.get().value()) ? below(copy, next.get()) : round(next.get());
      if (below.isEmpty()) {
        return copies;
      }
      copy = below.get();
      copies.add(0, copy);
      next = PolicyLoader.buildsOn(copy.tree());
    }
    return copies;
  }

  private Optional<Copy> below(Copy above, Located<String> name) {
    Optional<Loaded<Copy>> found = finder.below(above, name.value());
    if (found.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.MISSING_FLOOR,
                  name.span(),
                  "no policy is called `" + name.value() + "`")
              .help("put its folder beside the folder of this policy, or correct the name"));
      return Optional.empty();
    }
    problems.addAll(found.get().diagnostics());
    return found.get().match(Optional::of, errors -> Optional.empty());
  }

  private Optional<Copy> round(Located<String> name) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.MISSING_FLOOR,
                name.span(),
                "`" + name.value() + "` builds on itself in the end")
            .help("let the lowest policy build on nothing"));
    return Optional.empty();
  }

  private void load(Copy copy, List<Policy> layers) {
    PolicyLoader loader = loader(copy);
    Loaded<Policy> policy = copy.load(tree -> loader.load(tree, List.copyOf(layers)));
    problems.addAll(policy.diagnostics());
    policy.match(layers::add, errors -> false);
  }

  /**
   * The citations of a shipped policy were looked up by the tests that it was shipped with; those
   * of any other policy are looked up now.
   */
  private PolicyLoader loader(Copy copy) {
    return copy.shipped()
        ? PolicyLoader.ofChecked(vocabulary)
        : new PolicyLoader(
            vocabulary, problems.keep(bibliography.get(), () -> new Bibliography(List.of())));
  }
}
