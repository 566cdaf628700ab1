package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The verb tidy. */
class TidyTest {
  @TempDir Path folder;

  /** Every policy, case file, vocabulary, bibliography and file of findings in the repository. */
  static Stream<Path> files() throws IOException {
    List<Path> all = new ArrayList<>();
    for (String place : List.of("policies/src", "policies/examples", "content/src/main")) {
      try (Stream<Path> found = Files.walk(Path.of("..").resolve(place))) {
        found.filter(TidyTest::isOurs).sorted().forEach(all::add);
      }
    }
    assertTrue(all.size() >= 14, all::toString);
    return all.stream();
  }

  private static boolean isOurs(Path file) {
    String path = file.toString();
    return path.endsWith("policy.yaml")
        || path.endsWith("cases.yaml")
        || path.endsWith("bibliography.yaml")
        || (path.endsWith(".yaml") && (path.contains("vocabulary") || path.contains("examples")));
  }

  /** A copy beside copies of all policies, so that what it builds on is found. */
  private Path copy(Path file) throws IOException {
    Path own = Objects.requireNonNull(file.toAbsolutePath().getParent());
    Path copied = folder.resolve(own.getFileName());
    Files.createDirectories(copied);
    try (Stream<Path> beside = Files.list(own)) {
      for (Path each : beside.filter(Files::isRegularFile).toList()) {
        Files.copy(each, copied.resolve(each.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    return copied.resolve(file.getFileName());
  }

  /**
   * Worked cases that speak of a policy's own findings, and policies that need something beside
   * them, are refused with the reason; nothing is ever changed by halves.
   */
  @Test
  void everyFileIsLaidOutOnceOrLeftAsItIs() throws IOException {
    int laidOut = 0;
    List<Path> files = files().toList();
    for (Path file : files) {
      laidOut += isLaidOut(file) ? 1 : 0;
    }
    assertTrue(laidOut * 4 >= files.size() * 3, laidOut + " of " + files.size());
  }

  private boolean isLaidOut(Path file) throws IOException {
    Path copy = copy(file);
    byte[] before = Files.readAllBytes(copy);
    Ran first = Ran.with("tidy", copy.toString());
    if (first.code() == 3) {
      assertArrayEquals(before, Files.readAllBytes(copy), file::toString);
      return false;
    }
    assertEquals(0, first.code(), () -> file + ": " + first.err());
    String laid = Files.readString(copy, UTF_8);
    Ran second = Ran.with("tidy", copy.toString());
    assertEquals("Laid out already: " + copy + "\n", second.out(), second.err());
    assertEquals(laid, Files.readString(copy, UTF_8));
    assertEquals(comments(Files.readString(file, UTF_8)), comments(laid), file::toString);
    return true;
  }

  private static long comments(String text) {
    return text.lines().filter(l -> l.strip().startsWith("#")).count();
  }

  @Test
  void whatItLooksLike() throws IOException {
    Path file = folder.resolve("findings.yaml");
    Files.writeString(
        file,
        """
        ---
        # Who and where
        findings:   # as the nurse found it
              place: 'ward'

              # of this morning
              ph: "4.5"
              aspirate: obtained
        question: "use"
        """,
        UTF_8);
    Ran ran = Ran.with("tidy", file.toString(), "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(file.toString(), Repo.json(ran.out()).path("written").path(0).asText());
    assertEquals(
        """
        question: use
        # Who and where
        findings:  # as the nurse found it
          place: ward

          # of this morning
          ph: 4.5
          aspirate: obtained
        """,
        Files.readString(file, UTF_8));
  }

  /** A policy that lost or doubled a line, or holds a slip, is told so and stays byte for byte. */
  @ParameterizedTest
  @MethodSource("slips")
  void aBrokenFileIsLeftAsItIs(String good, String bad, String code) throws IOException {
    Path copy = copy(Path.of(Repo.file(SHIPPED)));
    String text = Files.readString(copy, UTF_8);
    assertTrue(text.contains(good), good);
    byte[] broken = text.replaceFirst(Pattern.quote(good), bad).getBytes(UTF_8);
    Files.write(copy, broken);
    Ran ran = Ran.with("tidy", copy.toString());
    assertEquals(3, ran.code(), ran.out());
    assertTrue(ran.err().contains("[" + code + "]"), ran.err());
    assertArrayEquals(broken, Files.readAllBytes(copy));
    try (Stream<Path> beside = Files.list(copy.getParent())) {
      assertFalse(beside.anyMatch(p -> p.getFileName().toString().startsWith(".tidy")));
    }
  }

  private static final String SHIPPED =
      "policies/src/main/resources/org/tidemark/policies/floor-england-adult/policy.yaml";

  static Stream<Arguments> slips() {
    return Stream.of(
        Arguments.of("edition: ", "edition: x", "unit-in-number"),
        Arguments.of("owner: ", "ownr: ", "unknown-key"),
        Arguments.of("values:", "\tvalues:", "tab"),
        Arguments.of("title:", "kind: floor\ntitle:", "duplicate-key"),
        Arguments.of("values:", "values: [", "syntax"));
  }

  @Test
  void linksAndPermissionsStay() throws IOException {
    Path copy = copy(Path.of(Repo.example("clear-check")));
    Files.writeString(copy, Files.readString(copy, UTF_8).replace(": ", ":   "), UTF_8);
    Files.setPosixFilePermissions(copy, PosixFilePermissions.fromString("rw-r-----"));
    Path link = folder.resolve("link.yaml");
    Files.createSymbolicLink(link, copy);
    Ran ran = Ran.with("tidy", link.toString());
    assertEquals("Laid out: " + link + "\n", ran.out(), ran.err());
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)));
    assertFalse(Files.readString(copy, UTF_8).contains(":   "));
  }

  @Test
  void aMissingFileIsAnError() {
    Ran ran = Ran.with("tidy", folder.resolve("none.yaml").toString());
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("[missing-file]"), ran.err());
  }

  @Test
  void helpHasExamples() {
    Ran ran = Ran.with("tidy", "--help");
    assertTrue(ran.out().contains("tidemark tidy our-policies/ward-adult/policy.yaml"), ran.out());
  }
}
