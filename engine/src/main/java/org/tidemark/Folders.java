package org.tidemark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Looks into folders. */
final class Folders {
  private Folders() {}

  /** The folders within a folder that hold a file of a name, by the alphabet. */
  static List<Path> within(Path folder, String file) {
    try (Stream<Path> children = Files.list(folder)) {
      return children.filter(c -> Files.isRegularFile(c.resolve(file))).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the folder " + folder + " cannot be read", unreadable);
    }
  }
}
