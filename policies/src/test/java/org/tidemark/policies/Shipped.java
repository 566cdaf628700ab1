package org.tidemark.policies;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.BibliographyLoader;
import org.tidemark.load.PolicyLoader;
import org.tidemark.load.VocabularyFile;
import org.tidemark.load.VocabularyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Policy;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.trial.CaseFile;
import org.tidemark.trial.CasesLoader;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** The shipped vocabulary, bibliography and policies, loaded; anything broken fails the test. */
final class Shipped {
  static final String FLOOR = "policies/floor-england-adult";
  static final String HOSPITAL = "policies/example-general-adult";
  static final String ROOM_FOR_PLANS = "constructs/policy-with-room-for-plans";
  static final String PLAN = "constructs/plan-for-one-patient";
  static final String PORTSMOUTH = "published/po-02-portsmouth-icu";
  static final String NORDJYLLAND = "published/po-12-nordjylland";

  /** Structures that somebody published, and one of common practice, kept to test the language. */
  static final List<String> STRUCTURES =
      List.of(
          PORTSMOUTH,
          "published/po-08-newcastle-home",
          "published/po-09-stroke-teaching",
          "published/po-10-glasgow-newborn",
          "published/po-11-newborn-network",
          NORDJYLLAND,
          "published/po-14-lausanne",
          "published/po-16-philadelphia-home",
          "published/po-17-toronto-home",
          "published/po-18-farrer-park",
          "published/po-25-london-icu",
          "published/plymouth-home",
          "published/laboratory-list",
          "practice/practice-adult",
          "practice/practice-child");

  private static final VocabularyFile WORDS =
      sound(VocabularyLoader.load(tree("policies/vocabulary/nasogastric-tube.yaml")));
  private static final Bibliography SOURCES =
      sound(BibliographyLoader.load(tree("content/sources/bibliography.yaml")));

  private Shipped() {}

  static VocabularyFile words() {
    return WORDS;
  }

  static Bibliography bibliography() {
    return SOURCES;
  }

  static Policy floor() {
    return sound(layer(FLOOR, List.of()));
  }

  static Policy hospital() {
    return sound(layer(HOSPITAL, List.of(floor())));
  }

  /** A plan for one patient, on the policy that leaves room for it. */
  static Policy plan() {
    return sound(layer(PLAN, List.of(alone(ROOM_FOR_PLANS))));
  }

  /** A policy that builds on nothing. */
  static Policy alone(String folder) {
    return sound(layer(folder, List.of()));
  }

  private static Loaded<Policy> layer(String folder, List<Policy> below) {
    return new PolicyLoader(WORDS.vocabulary(), SOURCES).load(tree(folder + "/policy.yaml"), below);
  }

  /** A policy as it answers: with the layers that it stands on. */
  static EffectivePolicy policy(String folder) {
    List<Policy> layers =
        switch (folder) {
          case FLOOR -> List.of(floor());
          case HOSPITAL -> List.of(floor(), hospital());
          case PLAN -> List.of(alone(ROOM_FOR_PLANS), plan());
          default -> List.of(alone(folder));
        };
    return sound(Layering.combine(WORDS.vocabulary(), layers));
  }

  static CaseFile cases(String folder) {
    return sound(CasesLoader.load(tree(folder + "/cases.yaml"), policy(folder).vocabulary()));
  }

  static YamlNode tree(String path) {
    return sound(new YamlReader().read(SourceText.of(path, text(path))));
  }

  static String text(String path) {
    String name = "/org/tidemark/" + path;
    try (InputStream in = Shipped.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("not on the class path: " + name);
      }
      return sound(SourceText.decode(path, in.readAllBytes())).text();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static <T> T sound(Loaded<T> loaded) {
    return loaded.match(
        value -> value,
        diagnostics -> {
          throw new AssertionError(
              diagnostics.stream().map(Diagnostic::render).collect(Collectors.joining("\n")));
        });
  }
}
