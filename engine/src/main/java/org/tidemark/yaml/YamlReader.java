package org.tidemark.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** Reads YAML, or the JSON that is YAML too, to a tree whose every node knows its place. */
public final class YamlReader {
  private static final long BYTE_ORDER_MARK = 3;

  private final YamlLimits limits;

  public YamlReader() {
    this(YamlLimits.DEFAULT);
  }

  public YamlReader(YamlLimits limits) {
    this.limits = limits;
  }

  /** Reads a file as UTF-8; a file that is missing or cannot be read is an error like any other. */
  public Loaded<YamlNode> read(Path file) {
    return source(file).match(this::read, Loaded::broken);
  }

  /** Reads a text. All problems of the raw text and of its structure come together. */
  public Loaded<YamlNode> read(SourceText source) {
    return tree(source).loaded();
  }

  /**
   * Reads a file and has its tree understood in the same pass, so that problems of the text and
   * problems of the meaning come together. The loader also sees a tree whose text has errors; what
   * it makes of it is then not used.
   */
  public <T> Loaded<T> read(Path file, Function<YamlNode, Loaded<T>> loader) {
    return source(file).match(source -> read(source, loader), Loaded::broken);
  }

  /** The same for a text. */
  public <T> Loaded<T> read(SourceText source, Function<YamlNode, Loaded<T>> loader) {
    return tree(source).then(loader);
  }

  private Loaded<SourceText> source(Path file) {
    try {
      return Files.size(file) > 4L * limits.characters() + BYTE_ORDER_MARK
          ? Loaded.broken(tooLarge(SourceText.of(file.toString(), "")))
          : SourceText.decode(file.toString(), Files.readAllBytes(file));
    } catch (IOException unreadable) {
      return Loaded.broken(missing(file));
    }
  }

  private Tree tree(SourceText source) {
    return source.text().length() > limits.characters()
        ? new Tree(Optional.empty(), List.of(tooLarge(source)), List.of())
        : Reading.of(source, limits);
  }

  private Diagnostic tooLarge(SourceText source) {
    return Diagnostic.error(
            DiagnosticCode.TOO_LARGE,
            source.beginning(),
            "the text has more than " + limits.characters() + " characters")
        .help("no policy needs this much; two files may have been joined");
  }

  private static Diagnostic missing(Path file) {
    SourceText nothing = SourceText.of(file.toString(), "");
    String why =
        Files.isDirectory(file)
            ? "this is a folder, not a file"
            : "there is no such file, or it may not be read";
    return Diagnostic.error(DiagnosticCode.MISSING_FILE, nothing.beginning(), why)
        .help("check the path; it is looked up from the folder in which the program was started");
  }
}
