package org.tidemark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.GroupChecks;
import org.tidemark.load.Acceptances;
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
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.CasesLoader;
import org.tidemark.trial.Trial;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Policies, by name or path. */
final class PolicyShelf {
  private static final String CASES = "cases.yaml";

  private final Lazy<Loaded<Catalogue>> catalogue;
  private final Lazy<Loaded<VocabularyFile>> words;
  private final Lazy<Loaded<Bibliography>> bibliography;
  private final PolicyFinder finder;
  private final Resources resources;

  PolicyShelf(Resources resources, List<Path> folders, Lazy<Loaded<Bibliography>> bibliography) {
    this.catalogue = new Lazy<>(() -> resources.read("policies/catalogue.yaml", Catalogue::read));
    this.words =
        new Lazy<>(
            () ->
                resources.read(
                    "policies/vocabulary/nasogastric-tube.yaml", VocabularyLoader::load));
    this.bibliography = bibliography;
    this.resources = resources;
    this.finder = new PolicyFinder(resources, folders);
  }

  Loaded<Vocabulary> vocabulary() {
    return words
        .get()
        .match(file -> Loaded.good(file.vocabulary(), words.get().diagnostics()), Loaded::broken);
  }

  Loaded<VocabularyFile> words() {
    return words.get();
  }

  Loaded<String> demo() {
    return catalogue.get().match(c -> Loaded.good(c.demo()), Loaded::broken);
  }

  Loaded<EffectivePolicy> policy(String nameOrPath) {
    List<Diagnostic> unreadable = finder.unreadable();
    if (!unreadable.isEmpty()) {
      return Loaded.broken(unreadable);
    }
    Optional<Loaded<Copy>> found = finder.asked(nameOrPath);
    if (found.isEmpty()) {
      return Loaded.broken(unknown(nameOrPath));
    }
    List<Diagnostic> said = found.get().diagnostics();
    return found.get().match(top -> onItsLayers(top, said), Loaded::broken);
  }

  /** The worked cases that lie beside a policy. */
  Loaded<CaseFile> cases(String nameOrPath, EffectivePolicy policy) {
    Optional<Loaded<Copy>> found = finder.asked(nameOrPath);
    return found.isEmpty()
        ? Loaded.broken(unknown(nameOrPath))
        : found.get().match(copy -> cases(nameOrPath, copy, policy), Loaded::broken);
  }

  private Loaded<CaseFile> cases(String name, Copy copy, EffectivePolicy policy) {
    return copy.file()
        .map(file -> cases(file.resolveSibling(CASES), policy))
        .orElseGet(() -> resources.read("policies/" + name + "/" + CASES, in(policy)));
  }

  /** The worked cases in a file, in the words of a policy. */
  Loaded<CaseFile> cases(Path file, EffectivePolicy policy) {
    return new YamlReader().read(file, in(policy));
  }

  private static Function<YamlNode, Loaded<CaseFile>> in(EffectivePolicy policy) {
    return root -> CasesLoader.load(root, policy.vocabulary());
  }

  Loaded<Trial> trial(EffectivePolicy policy) {
    return words.get().match(file -> Loaded.good(Trial.of(policy, file)), Loaded::broken);
  }

  private Loaded<EffectivePolicy> onItsLayers(Copy top, List<Diagnostic> said) {
    Problems problems = new Problems();
    problems.addAll(said);
    return vocabulary()
        .match(v -> new Layers(v, bibliography, finder, problems).combine(top), Loaded::broken);
  }

  /** A policy's text, as it would be if its file held it. */
  Loaded<EffectivePolicy> policy(YamlNode tree, Path file) {
    return onItsLayers(new Copy(tree, Optional.of(file), List.of()), List.of());
  }

  /** The policies in the folders, then those that are shipped. */
  Listing list() {
    Problems problems = new Problems();
    problems.addAll(finder.unreadable());
    Problems remarks = new Problems();
    List<EffectivePolicy> sound = new ArrayList<>();
    for (String name : names(problems)) {
      Loaded<EffectivePolicy> read =
          finder
              .listed(name)
              .match(top -> onItsLayers(top, List.of()), Loaded::<EffectivePolicy>broken);
      read.match(policy -> sound.add(policy), broken -> true);
      read.match(policy -> remarks, broken -> problems).addAll(read.diagnostics());
    }
    List<Header> headers = sound.stream().map(EffectivePolicy::header).toList();
    remarks.addAll(Acceptances.mark(headers, GroupChecks.of(sound)));
    return new Listing(headers, problems.sorted(), remarks.sorted());
  }

  private Set<String> names(Problems problems) {
    Set<String> names = new LinkedHashSet<>(finder.inFolders());
    names.addAll(problems.keep(catalogue.get(), () -> new Catalogue(List.of(), "")).policies());
    return names;
  }

  private Diagnostic unknown(String name) {
    List<String> known = new ArrayList<>();
    known.addAll(finder.inFolders());
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
