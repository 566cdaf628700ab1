package org.tidemark.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes what a verb made to a file, and never over another one unasked. */
final class OutFile {
  private final Path file;
  private final boolean replace;

  OutFile(Path file, boolean replace) {
    this.file = file;
    this.replace = replace;
  }

  /** Why it could not be written; empty when it was. */
  String write(String text) {
    try {
      Files.writeString(file, text, UTF_8, how());
      return "";
    } catch (FileAlreadyExistsException there) {
      return file + " is there already. Give --replace to write over it, or another --out.";
    } catch (IOException unwritable) {
      return file + " cannot be written. Give another place with --out.";
    }
  }

  private OpenOption[] how() {
    return replace
        ? new OpenOption[] {
          StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE
        }
        : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
  }
}
