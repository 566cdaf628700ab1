package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidemark.model.Policy;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;

/**
 * Two thousand broken copies of a good policy: each loads, or says at a place in the file why not.
 */
final class MutantsTest {
  private static final int MUTANTS = 2_000;
  private static final List<String> OTHER_KINDS =
      List.of(
          "",
          "[]",
          "{}",
          "[a, b]",
          "{a: b}",
          "text",
          "5",
          "5,5",
          "\"\"",
          "yes",
          "~",
          "'",
          "\"",
          "[",
          "}",
          "- x",
          ">= 5",
          "@",
          "\t",
          "\u00A0",
          "\u202E",
          "*a",
          "&a b",
          "!!str 5",
          "{other-than: 5}",
          "{at-least: 9, at-most: 1}",
          "\uD83D\uDED1",
          "99999999999",
          "2026-13-01",
          "not-stated");

  @Test
  void theGoodPolicyItselfLoads() {
    assertEquals(List.of(), errors(load(Bench.resource("base/policy.yaml"))));
  }

  @Test
  void noMutantIsAnythingButLoadedOrRefusedWithAPlace() {
    Random random = new Random(20260901);
    List<String> lines = Bench.resource("base/policy.yaml").lines().toList();
    int refused = 0;
    for (int i = 0; i < MUTANTS; i++) {
      String mutant = mutant(lines, random);
      Loaded<Policy> loaded = load(mutant);
      List<String> errors = errors(loaded);
      boolean good = loaded.match(p -> true, e -> false);
      assertEquals(good, errors.isEmpty(), mutant);
      refused += good ? 0 : 1;
      loaded
          .diagnostics()
          .forEach(d -> assertTrue(d.at().end() <= mutant.length() && !d.render().isBlank()));
    }
    assertTrue(refused > MUTANTS / 2, "only " + refused + " were refused");
  }

  private static Loaded<Policy> load(String text) {
    return Bench.policy(SourceText.of("mutant.yaml", text));
  }

  private static List<String> errors(Loaded<Policy> loaded) {
    return loaded.diagnostics().stream()
        .filter(d -> d.severity() == Severity.ERROR)
        .map(Object::toString)
        .toList();
  }

  /** One line changed: its value is another kind of thing, its name is another, or it is gone. */
  private static String mutant(List<String> lines, Random random) {
    List<String> changed = new java.util.ArrayList<>(lines);
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    int colon = line.indexOf(": ");
    String other = OTHER_KINDS.get(random.nextInt(OTHER_KINDS.size()));
    switch (random.nextInt(6)) {
      case 0 -> changed.remove(at);
      case 1 -> changed.add(at, line);
      case 2 -> changed.set(at, " " + line);
      case 3 -> changed.set(at, inside(line, other, random));
      default -> changed.set(at, colon < 0 ? other : line.substring(0, colon + 2) + other);
    }
    return String.join("\n", changed) + "\n";
  }

  private static String inside(String line, String other, Random random) {
    int from = random.nextInt(line.length() + 1);
    int to = from + random.nextInt(line.length() - from + 1);
    return line.substring(0, from) + other + line.substring(to);
  }
}
