package org.tidemark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
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

  <T> Loaded<T> read(String path, Function<YamlNode, Loaded<T>> loader) {
    return text(path).match(text -> new YamlReader().read(text, loader), Loaded::broken);
  }

  /** Every file of a kind in a folder, by the alphabet; only searching needs it. */
  Loaded<List<SourceText>> all(String folder, String ending) {
    URL found = loader.getResource(BASE + folder);
    if (found == null) {
      return Loaded.broken(missing(folder));
    }
    try {
      URI uri = found.toURI();
      if (!uri.getScheme().equals("jar")) {
        return texts(Path.of(uri), folder, ending);
      }
      try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
        return texts(jar.getPath(BASE + folder), folder, ending);
      }
    } catch (IOException | URISyntaxException unreadable) {
      throw new IllegalStateException(
          "the shipped folder " + folder + " cannot be read", unreadable);
    }
  }

  private static Loaded<List<SourceText>> texts(Path root, String folder, String ending)
      throws IOException {
    Problems problems = new Problems();
    List<SourceText> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(root)) {
      for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
        String name = folder + "/" + file.getFileName();
        Loaded<SourceText> text = SourceText.decode(name, Files.readAllBytes(file));
        problems.addAll(text.diagnostics());
        text.match(texts::add, broken -> false);
      }
    }
    return problems.conclude(() -> List.copyOf(texts));
  }

  Loaded<SourceText> text(String path) {
    try (InputStream in = loader.getResourceAsStream(BASE + path)) {
      return in == null ? Loaded.broken(missing(path)) : SourceText.decode(path, in.readAllBytes());
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
