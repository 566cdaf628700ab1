package org.tidemark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tidemark.load.PolicyLoader;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * A policy file that was found.
 *
 * @param tree what it holds
 * @param file where it lies; empty for one that is shipped
 * @param said what there is to say about its text, errors too: whoever loads it adds to that
 */
record Copy(YamlNode tree, Optional<Path> file, List<Diagnostic> said) {
  Copy {
    said = List.copyOf(said);
  }

  static Loaded<Copy> at(Path file) {
    List<YamlNode> tree = new ArrayList<>();
    return of(tree, new YamlReader().read(file, root -> kept(tree, root)), Optional.of(file));
  }

  static Loaded<Copy> shipped(SourceText text) {
    List<YamlNode> tree = new ArrayList<>();
    return of(tree, new YamlReader().read(text, root -> kept(tree, root)), Optional.empty());
  }

  private static Loaded<YamlNode> kept(List<YamlNode> tree, YamlNode root) {
    tree.add(root);
    return Loaded.good(root);
  }

  private static Loaded<Copy> of(List<YamlNode> tree, Loaded<YamlNode> read, Optional<Path> file) {
    return tree.isEmpty()
        ? Loaded.broken(read.diagnostics())
        : Loaded.good(new Copy(tree.get(0), file, read.diagnostics()));
  }

  /** Understands it; problems of its text and problems of its meaning come together. */
  <T> Loaded<T> load(Function<YamlNode, Loaded<T>> loader) {
    return said.isEmpty()
        ? loader.apply(tree)
        : new YamlReader().read(tree.span().source(), loader);
  }

  /** Whether the tests that ship it have already looked its citations up. */
  boolean shipped() {
    return file.isEmpty();
  }

  boolean sameTextAs(Copy other) {
    return tree.span().source().text().equals(other.tree.span().source().text());
  }

  /** Where it says its name, or else where it begins. */
  Span name() {
    return PolicyLoader.named(tree)
        .map(name -> name.span())
        .orElseGet(() -> tree.span().source().beginning());
  }
}
