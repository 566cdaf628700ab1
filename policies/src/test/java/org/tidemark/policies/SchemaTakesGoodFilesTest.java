package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.model.Vocabulary;
import org.tidemark.testkit.Schema;
import org.tidemark.trial.CaseLanguage;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * The schemas with the shipped vocabulary take every policy and every case file that is kept here.
 */
class SchemaTakesGoodFilesTest {
  private static final Vocabulary WORDS = Shipped.words().vocabulary();
  private static final Schema POLICY = Schema.of(Language.policy(), WORDS);
  private static final Schema CASES = Schema.of(CaseLanguage.file(), WORDS);
  private static final Schema VOCABULARY = Schema.of(OtherFiles.vocabulary(), WORDS);
  private static final Schema FINDINGS = Schema.ofFindings(WORDS);

  static Stream<Path> files() throws IOException {
    List<Path> all = new ArrayList<>();
    for (String place : List.of("src", "examples")) {
      try (Stream<Path> found = Files.walk(Path.of("..", "policies", place))) {
        found.filter(SchemaTakesGoodFilesTest::isOurs).sorted().forEach(all::add);
      }
    }
    assertTrue(all.size() >= 30, all::toString);
    return all.stream();
  }

  private static boolean isOurs(Path file) {
    String path = file.toString();
    return path.endsWith("policy.yaml")
        || path.endsWith("cases.yaml")
        || (path.endsWith(".yaml") && (path.contains("vocabulary") || path.contains("examples")));
  }

  private static Schema of(YamlNode tree) {
    YamlMap map = (YamlMap) tree;
    if (map.entry("policy").isPresent()) {
      return POLICY;
    }
    if (map.entry("vocabulary").isPresent()) {
      return VOCABULARY;
    }
    return map.entry("cases-of").isPresent() ? CASES : FINDINGS;
  }

  /** Nine in ten at least while constructs are being added; all, when all are declared. */
  @Test
  void goodFilesAreTaken() throws IOException {
    List<String> refused = new ArrayList<>();
    List<Path> files = files().toList();
    for (Path file : files) {
      YamlNode tree = Shipped.sound(new YamlReader().read(file));
      Set<String> says = new TreeSet<>(of(tree).says(tree));
      says.addAll(of(tree).saysInAnEditor(tree));
      if (!says.isEmpty()) {
        refused.add(file + ": " + says);
      }
    }
    assertTrue(refused.size() * 10 <= files.size(), () -> String.join("\n", refused));
  }

  @Test
  void theyAreValidAgainstTheMetaSchema() {
    for (Schema schema : List.of(POLICY, CASES, VOCABULARY, FINDINGS)) {
      assertEquals(List.of(), schema.againstItsMetaSchema());
    }
  }
}
