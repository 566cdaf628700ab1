package org.tidemark;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.BibliographyLoader;
import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.load.Part;
import org.tidemark.load.Shapes;
import org.tidemark.load.VocabularyFile;
import org.tidemark.load.VocabularyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Loaded;
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.CaseLanguage;
import org.tidemark.trial.CasesLoader;
import org.tidemark.yaml.Shape;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** What a file of any kind means, so that two readings of it can be held against each other. */
final class Meaning {
  private final PolicyShelf shelf;

  Meaning(PolicyShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * What was understood.
   *
   * @param shape how such a file is laid out
   * @param same whether another reading means the same
   */
  record Understood(Shape shape, Function<Understood, Boolean> same, Object value) {
    boolean means(Understood other) {
      return same.apply(other);
    }
  }

  /** Understands a file by the name that it begins with. */
  Loaded<Understood> of(YamlNode root, Path file) {
    if (has(root, "policy")) {
      return as(
          Language.policy(),
          shelf.policy(root, file),
          EffectivePolicy.class,
          EffectivePolicy::saysTheSameAs);
    }
    if (has(root, "vocabulary")) {
      return as(
          OtherFiles.vocabulary(),
          VocabularyLoader.load(root),
          VocabularyFile.class,
          VocabularyFile::saysTheSameAs);
    }
    if (has(root, "bibliography")) {
      return as(
          OtherFiles.bibliography(),
          BibliographyLoader.load(root),
          Bibliography.class,
          (a, b) -> List.copyOf(a.entries()).equals(List.copyOf(b.entries())));
    }
    return shelf.vocabulary().match(words -> inWords(root, words), Loaded::broken);
  }

  private static Loaded<Understood> inWords(YamlNode root, Vocabulary words) {
    return has(root, "cases-of") || has(root, "cases")
        ? as(CaseLanguage.file(), CasesLoader.load(root, words), CaseFile.class, CaseFile::equals)
        : as(OtherFiles.asked(), Asked.read(root, words), Asked.class, Asked::equals);
  }

  private static boolean has(YamlNode root, String name) {
    return root instanceof YamlMap map && map.entry(name).isPresent();
  }

  private static <T> Loaded<Understood> as(
      Part part, Loaded<T> loaded, Class<T> type, BiPredicate<T, T> same) {
    return loaded.match(
        value ->
            Loaded.good(
                new Understood(
                    Shapes.of(part),
                    other ->
                        type.isInstance(other.value())
                            && same.test(value, type.cast(other.value())),
                    value),
                loaded.diagnostics()),
        Loaded::broken);
  }
}
