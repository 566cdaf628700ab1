package org.tidemark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** The shipped files: on the class path, under {@code org/tidemark}. */
final class Resources {
  private static final String BASE = "org/tidemark/";

  private final ClassLoader loader;

  Resources(ClassLoader loader) {
    this.loader = loader;
  }

  boolean has(String path) {
    return loader.getResource(BASE + path) != null;
  }

  Loaded<YamlNode> read(String path) {
    try (InputStream in = loader.getResourceAsStream(BASE + path)) {
      if (in == null) {
        return Loaded.broken(missing(path));
      }
      return SourceText.decode(path, in.readAllBytes())
          .match(text -> new YamlReader().read(text), Loaded::broken);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the shipped file " + path + " cannot be read", unreadable);
    }
  }

  private static Diagnostic missing(String path) {
    return Diagnostic.error(
            DiagnosticCode.MISSING_FILE,
            SourceText.of(path, "").beginning(),
            "the shipped file is not on the class path")
        .help("keep the program's folder lib beside its jar, as it was built");
  }
}
