package org.tidemark.policies;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidemark.decide.Decider;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.load.Part;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.trial.CaseLanguage;
import org.tidemark.yaml.YamlReader;

/** The page about the language: its tables are the declared language, and its examples hold. */
class LanguagePageTest {
  private static final Path FILE = Path.of("..", "policies", "LANGUAGE.md");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String HOW =
      "policies/LANGUAGE.md: give each part a heading, the lines `<!-- table: its name -->` and `<!-- end -->`,"
          + " and an example; then run this test with -Dtidemark.write.language=true, which fills the tables.";

  private static LanguagePage page() throws IOException {
    return new LanguagePage(Files.readString(FILE, UTF_8));
  }

  private static Map<String, Part> parts() {
    Map<String, Part> parts = new LinkedHashMap<>();
    Stream.of(Language.ofPolicies(), CaseLanguage.all(), OtherFiles.all())
        .flatMap(List::stream)
        .forEach(p -> parts.put(p.called(), p));
    return parts;
  }

  @Test
  void everyPartAndEveryFieldStandsOnThePage() throws IOException {
    Map<String, Part> parts = parts();
    LanguagePage page = page();
    assertEquals(new TreeSet<>(parts.keySet()), new TreeSet<>(page.tables()), HOW);
    String should = page.withTables(parts);
    if (Boolean.getBoolean("tidemark.write.language")) {
      Files.writeString(FILE, should, UTF_8);
    }
    assertEquals(should, Files.readString(FILE, UTF_8), HOW);
  }

  @Test
  void everyFieldOfAPolicyHasAnExample() throws IOException {
    String examples =
        String.join("\n", page().examples().stream().map(LanguagePage.Example::yaml).toList());
    Set<String> missing = new TreeSet<>();
    for (Part part : Language.ofPolicies()) {
      for (String name : part.names()) {
        boolean shown = Pattern.compile("(^|[\\s{])" + name + ":").matcher(examples).find();
        if (!shown) {
          missing.add(name + " of " + part.called());
        }
      }
    }
    assertEquals(Set.of(), missing, HOW);
  }

  static Stream<LanguagePage.Example> examples() throws IOException {
    List<LanguagePage.Example> all = page().examples();
    assertTrue(all.size() >= 15, "only " + all.size());
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void anExampleHolds(LanguagePage.Example example) throws IOException {
    Loaded<EffectivePolicy> loaded =
        example.isALayer()
            ? Snippets.layered(page().first(), example.yaml())
            : Snippets.alone(page().whole(example));
    assertTrue(!example.expected().isEmpty(), "it says what comes of it");
    for (String line : example.expected()) {
      if (line.startsWith("error ")) {
        assertTrue(errors(loaded).contains(line.substring(6)), errors(loaded)::toString);
      } else if (line.equals("loads")) {
        assertEquals(List.of(), errors(loaded));
      } else {
        answers(Shipped.sound(loaded), line);
      }
    }
  }

  private static List<String> errors(Loaded<EffectivePolicy> loaded) {
    return Snippets.remarks(loaded, Severity.ERROR);
  }

  private static void answers(EffectivePolicy policy, String line) {
    int begin = line.indexOf(' ');
    int arrow = line.indexOf(" -> ");
    String findings = line.substring(begin + 1, arrow);
    Decider decider = Decider.of(policy, line.substring(0, begin)).orElseThrow();
    String outcome =
        decider
            .decide(
                Shipped.sound(
                    FindingsLoader.load(
                        Shipped.sound(new YamlReader().read(SourceText.of("findings", findings))),
                        policy.vocabulary())),
                TODAY)
            .outcome()
            .word();
    assertEquals(line.substring(arrow + 4), outcome, line);
  }
}
