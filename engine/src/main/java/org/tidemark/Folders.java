package org.tidemark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.SourceText;

/** Looks into folders. */
final class Folders {
  private Folders() {}

  static boolean readable(Path folder) {
    return Files.isDirectory(folder) && Files.isReadable(folder);
  }

  /** Never passed over: what lies in it would be missed, and something else answer in its place. */
  static Diagnostic unreadable(Path folder) {
    return Diagnostic.error(
            DiagnosticCode.MISSING_FILE,
            SourceText.of(folder.toString(), "").beginning(),
            Files.exists(folder) ? "this is no folder that may be read" : "there is no such folder")
        .help("check the path; it is looked up from the folder in which the program was started");
  }

  /** The folders within a folder that hold a file of a name, by the alphabet. */
  static List<Path> within(Path folder, String file) {
    try (Stream<Path> children = Files.list(folder)) {
      return children.filter(c -> Files.isRegularFile(c.resolve(file))).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the folder " + folder + " cannot be read", unreadable);
    }
  }
}
