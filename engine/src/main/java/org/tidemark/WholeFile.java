package org.tidemark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Writes a file whole or not at all: nobody ever sees half of it. */
final class WholeFile {
  private WholeFile() {}

  /** Replaces a file that is there; a link stays a link, and who may read it stays as it was. */
  static void replace(Path file, String text) {
    try {
      Path real = file.toRealPath();
      Path folder = real.getParent();
      Path beside = Files.createTempFile(folder, ".tidy-", ".yaml");
      try {
        Files.writeString(beside, text, UTF_8);
        samePermissions(real, beside);
        Files.move(
            beside, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException unwritable) {
      throw new UncheckedIOException(file + " cannot be written", unwritable);
    }
  }

  private static void samePermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView young = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (old != null && young != null) {
      young.setPermissions(old.readAttributes().permissions());
    }
  }
}
