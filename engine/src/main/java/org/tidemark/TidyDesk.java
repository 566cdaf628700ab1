package org.tidemark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.tidemark.Meaning.Understood;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.Layout;
import org.tidemark.yaml.Saying;
import org.tidemark.yaml.Shape;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * Lays files out. What was laid out is read again before it is written: it must say the same, mean
 * the same, be remarked on in the same words, hold every comment, and be laid out so already.
 */
final class TidyDesk {
  private final Meaning meaning;
  private final BiFunction<YamlNode, Shape, String> layout;

  TidyDesk(PolicyShelf shelf) {
    this(new Meaning(shelf), Layout::of);
  }

  /** With another layout, so that a wrong one can be shown to be refused. */
  TidyDesk(Meaning meaning, BiFunction<YamlNode, Shape, String> layout) {
    this.meaning = meaning;
    this.layout = layout;
  }

  Loaded<Tidied> tidy(Path file) {
    List<YamlNode> tree = new ArrayList<>();
    Loaded<Understood> read =
        new YamlReader()
            .read(
                file,
                root -> {
                  tree.add(root);
                  return meaning.of(root, file);
                });
    return read.match(
        before -> Loaded.good(write(file, tree.get(0), before, read), read.diagnostics()),
        Loaded::broken);
  }

  private Tidied write(Path file, YamlNode tree, Understood before, Loaded<Understood> remarks) {
    String text = layout.apply(tree, before.shape());
    SourceText source = tree.span().source();
    if (text.equals(source.text())) {
      return new Tidied(file, false);
    }
    prove(SourceText.of(source.name(), text), file, tree, before, remarks);
    WholeFile.replace(file, text);
    return new Tidied(file, true);
  }

  private void prove(
      SourceText text, Path file, YamlNode tree, Understood before, Loaded<Understood> remarks) {
    List<YamlNode> again = new ArrayList<>();
    Loaded<Understood> read =
        new YamlReader()
            .read(
                text,
                root -> {
                  again.add(root);
                  return meaning.of(root, file);
                });
    boolean same =
        read.match(
            after ->
                before.means(after)
                    && messages(read).equals(messages(remarks))
                    && sameText(tree, again.get(0), before.shape())
                    && layout.apply(again.get(0), before.shape()).equals(text.text()),
            broken -> false);
    if (!same) {
      throw new IllegalStateException(
          file + " would not say the same when laid out, and was left as it is");
    }
  }

  private static boolean sameText(YamlNode before, YamlNode after, Shape shape) {
    return Saying.of(before, shape).equals(Saying.of(after, shape))
        && Layout.comments(before).equals(Layout.comments(after));
  }

  /** What is remarked on the meaning; whether a hash took words away hangs on the line alone. */
  private static List<String> messages(Loaded<Understood> read) {
    return read.diagnostics().stream()
        .filter(d -> d.code() != DiagnosticCode.LOST_AFTER_HASH)
        .map(Diagnostic::message)
        .sorted()
        .toList();
  }
}
