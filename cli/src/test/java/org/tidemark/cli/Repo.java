package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Files of the repository and of the tests. */
final class Repo {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Repo() {}

  /** The path of a file of the repository. */
  static String file(String path) {
    return Path.of("..").resolve(path).toString();
  }

  static String example(String name) {
    return file("policies/examples/" + name + ".yaml");
  }

  static String golden(String name) {
    try (InputStream in = Repo.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("no such golden file: " + name);
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (IOException notJson) {
      throw new UncheckedIOException(text, notJson);
    }
  }
}
