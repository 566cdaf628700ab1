package org.tidemark.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;

/** Reads YAML, or the JSON that is YAML too, to a tree whose every node knows its place. */
public final class YamlReader {
  private final YamlLimits limits;

  public YamlReader() {
    this(YamlLimits.DEFAULT);
  }

  public YamlReader(YamlLimits limits) {
    this.limits = limits;
  }

  /** Reads a file as UTF-8; a file that is missing or cannot be read is an error like any other. */
  public Loaded<YamlNode> read(Path file) {
    try {
      return SourceText.decode(file.toString(), Files.readAllBytes(file))
          .match(this::read, Loaded::broken);
    } catch (IOException unreadable) {
      return Loaded.broken(missing(file));
    }
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

  /** Reads a text. All problems of the raw text and of its structure come together. */
  public Loaded<YamlNode> read(SourceText source) {
    Problems problems = new Problems();
    if (source.text().length() > limits.characters()) {
      return Loaded.broken(
          Diagnostic.error(
                  DiagnosticCode.TOO_LARGE,
                  source.beginning(),
                  "the text has " + source.text().length() + " characters")
              .help("the limit is " + limits.characters() + " characters"));
    }
    String clean = RawText.cleaned(source, problems);
    return new TreeBuilder(source, clean, limits, problems).build();
  }
}
