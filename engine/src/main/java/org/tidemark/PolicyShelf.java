package org.tidemark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.VocabularyFile;
import org.tidemark.load.VocabularyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Header;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;

/** Policies, by name or path. */
final class PolicyShelf {
  private final Lazy<Loaded<Catalogue>> catalogue;
  private final Lazy<Loaded<VocabularyFile>> words;
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final PolicyFinder finder;

  PolicyShelf(Resources resources, List<Path> folders, Lazy<Loaded<Bibliography>> bibliography) {
    this.catalogue =
        new Lazy<>(
            () -> resources.read("policies/catalogue.yaml").match(Catalogue::read, Loaded::broken));
    this.words =
        new Lazy<>(
            () ->
                resources
                    .read("policies/vocabulary/nasogastric-tube.yaml")
                    .match(VocabularyLoader::load, Loaded::broken));
    this.bibliography = bibliography;
    this.finder = new PolicyFinder(resources, folders);
  }

  Loaded<Vocabulary> vocabulary() {
    return words
        .get()
        .match(file -> Loaded.good(file.vocabulary(), words.get().diagnostics()), Loaded::broken);
  }

  Loaded<String> demo() {
    return catalogue.get().match(c -> Loaded.good(c.demo()), Loaded::broken);
  }

  Loaded<EffectivePolicy> policy(String nameOrPath) {
    Optional<Loaded<Copy>> found = finder.asked(nameOrPath);
    if (found.isEmpty()) {
      return Loaded.broken(unknown(nameOrPath));
    }
    List<Diagnostic> remarks = found.get().diagnostics();
    return found.get().match(top -> onItsLayers(top, remarks), Loaded::broken);
  }

  private Loaded<EffectivePolicy> onItsLayers(Copy top, List<Diagnostic> remarks) {
    return vocabulary()
        .match(
            v -> {
              Problems problems = new Problems();
              problems.addAll(remarks);
              return new Layers(v, bibliography, finder, problems).combine(top);
            },
            Loaded::broken);
  }

  /** The headers of the policies in the folders, then of those that are shipped. */
  Loaded<List<Header>> headers() {
    Problems problems = new Problems();
    List<String> names = new ArrayList<>();
    finder.inFolders().forEach(folder -> names.add(folder.toString()));
    names.addAll(problems.keep(catalogue.get(), () -> new Catalogue(List.of(), "")).policies());
    List<Header> headers = new ArrayList<>();
    for (String name : names) {
      Loaded<EffectivePolicy> policy = policy(name);
      problems.addAll(policy.diagnostics());
      policy.match(p -> headers.add(p.header()), broken -> false);
    }
    return problems.conclude(() -> List.copyOf(headers));
  }

  private Diagnostic unknown(String name) {
    List<String> known = new ArrayList<>();
    finder.inFolders().forEach(folder -> known.add(folder.getFileName().toString()));
    known.addAll(catalogue.get().match(Catalogue::policies, broken -> List.of()));
    SourceText typed = SourceText.of("policy", name);
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_POLICY,
            new Span(typed, 0, name.length()),
            "no policy is called `" + name + "`")
        .help(
            Suggestion.nearest(name, known)
                .map(near -> "did you mean `" + near + "`?")
                .orElse(
                    "these are known: "
                        + String.join(", ", known)
                        + "; or give the path of a policy's file"));
  }
}
