package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.Severity;

/**
 * What a reading found, good or bad.
 *
 * @param root the tree, when there is one that can be looked at; also when there are errors
 * @param diagnostics everything that there is to say
 * @param mended lines whose value was replaced so that reading could go on
 */
record Tree(Optional<YamlNode> root, List<Diagnostic> diagnostics, List<Integer> mended) {

  Loaded<YamlNode> loaded() {
    boolean broken = diagnostics.stream().anyMatch(d -> d.severity() == Severity.ERROR);
    return broken ? Loaded.broken(diagnostics) : Loaded.good(root.orElseThrow(), diagnostics);
  }

  /** Whoever understands the tree looks at it too, and both say what they found. */
  <T> Loaded<T> then(Function<YamlNode, Loaded<T>> loader) {
    if (root.isEmpty()) {
      return Loaded.broken(diagnostics);
    }
    Loaded<T> loaded = loader.apply(root.get());
    Problems all = new Problems();
    all.addAll(diagnostics);
    all.addAll(ofWhatWasTyped(loaded.diagnostics()));
    return loaded.match(
        value -> all.conclude(() -> value),
        errors -> Loaded.broken(all.anyError() ? all.sorted() : errors));
  }

  /** Without what is said about a stand-in that nobody typed. */
  private List<Diagnostic> ofWhatWasTyped(List<Diagnostic> said) {
    List<Diagnostic> typed = new ArrayList<>();
    for (Diagnostic d : said) {
      boolean standIn =
          diagnostics.stream()
              .anyMatch(e -> e.code() == DiagnosticCode.ANCHOR_OR_ALIAS && e.at().equals(d.at()));
      if (!standIn && !mended.contains(d.at().line())) {
        typed.add(d);
      }
    }
    return typed;
  }
}
