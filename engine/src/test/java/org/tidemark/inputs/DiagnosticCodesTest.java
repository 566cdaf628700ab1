package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.source.DiagnosticCode;

/**
 * Every code is said somewhere, those of reading and layering by a case, and the table of them in
 * DEVELOPERS.md is current. The table is written anew when the tests run with {@code
 * -Dtidemark.write.codes=true}.
 */
final class DiagnosticCodesTest {
  private static final String ROOT = "src/main/java/org/tidemark";
  private static final Path DOCUMENT = Path.of("../DEVELOPERS.md");
  private static final String BEGIN = "<!-- diagnostic codes: begin -->\n";
  private static final String END = "<!-- diagnostic codes: end -->\n";
  private static final Pattern CODE = Pattern.compile("DiagnosticCode\\.([A-Z][A-Z0-9_]+)");
  private static final Pattern SAID =
      Pattern.compile("^(?:error|warning|notice|accepted) ([a-z0-9-]+) ", Pattern.MULTILINE);
  private static final Set<String> READING = Set.of("source", "yaml", "load", "layer");

  @Test
  void everyCodeIsSaidSomewhere() {
    List<String> unsaid =
        Stream.of(DiagnosticCode.values())
            .filter(code -> saidIn(code).isEmpty())
            .map(DiagnosticCode::id)
            .toList();
    assertEquals(List.of(), unsaid, "delete what nobody says");
  }

  @Test
  void everyCodeOfReadingAndLayeringHasACase() {
    Set<String> cases = codesOfTheCases();
    List<String> without =
        Stream.of(DiagnosticCode.values())
            .filter(code -> saidIn(code).stream().anyMatch(READING::contains))
            .map(DiagnosticCode::id)
            .filter(id -> !cases.contains(id))
            .toList();
    assertEquals(List.of(), without, "write a case for each of these");
  }

  @Test
  void theTableInTheDocumentIsCurrent() throws IOException {
    String text = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    if (Boolean.getBoolean("tidemark.write.codes")) {
      String written = text.substring(0, from) + table() + text.substring(to);
      Files.writeString(DOCUMENT, written, StandardCharsets.UTF_8);
    } else {
      assertEquals(table(), text.substring(from, to), "run the command above the table");
    }
  }

  private static String table() {
    StringBuilder table = new StringBuilder("| code | what it says |\n|---|---|\n");
    for (DiagnosticCode code : DiagnosticCode.values()) {
      table.append("| `").append(code.id()).append("` | ").append(code.sentence()).append(" |\n");
    }
    return table.toString();
  }

  private record Room(String name, Set<String> codes) {}

  private static final List<Room> ROOMS = rooms();

  private static Set<String> saidIn(DiagnosticCode code) {
    return ROOMS.stream()
        .filter(r -> r.codes().contains(code.name()))
        .map(Room::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The codes that each file names, by the room that it stands in. */
  private static List<Room> rooms() {
    List<Room> all = new ArrayList<>(rooms(Path.of(ROOT)));
    all.addAll(rooms(Path.of("../cli", ROOT)));
    return all;
  }

  private static List<Room> rooms(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(f -> f.toString().endsWith(".java") && !f.endsWith("DiagnosticCode.java"))
          .map(f -> new Room(room(f), codes(f)))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String room(Path file) {
    Path engine = Path.of(ROOT);
    if (!file.startsWith(engine)) {
      return "cli";
    }
    Path inside = engine.relativize(file);
    return inside.getNameCount() == 1 ? "root" : inside.getName(0).toString();
  }

  private static Set<String> codes(Path file) {
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      return matches(CODE, text);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Set<String> codesOfTheCases() {
    return CaseFiles.all().stream()
        .flatMap(c -> matches(SAID, c.part("says")).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> matches(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .map((MatchResult m) -> m.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
