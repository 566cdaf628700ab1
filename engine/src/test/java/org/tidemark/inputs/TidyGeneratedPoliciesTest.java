package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.Language;
import org.tidemark.load.Shapes;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.Noise;
import org.tidemark.testkit.WrittenPolicies;
import org.tidemark.yaml.Layout;
import org.tidemark.yaml.Shape;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Any policy that is written loads, is laid out, and loads to the same policy again. */
class TidyGeneratedPoliciesTest {
  private static final int POLICIES = 150;
  private static final Shape SHAPE = Shapes.of(Language.policy());

  /**
   * The parts that no generated policy can have: it builds on nothing, and serves more than one.
   */
  private static final Set<String> NEVER =
      Set.of("agreed", "calls", "departs-from-floor", "accepts-barred", "accepted-warnings");

  @Test
  void itLoadsTheSameAfterwards() {
    Set<String> parts = new TreeSet<>();
    for (int seed = 0; seed < POLICIES; seed++) {
      String written = WrittenPolicies.text(new Random(seed));
      holds(written, "seed " + seed);
      holds(Noise.in(written, new Random(seed)), "seed " + seed + " with remarks");
      ((YamlMap) tree(written)).entries().forEach(e -> parts.add(e.key().text()));
    }
    Set<String> missing = new TreeSet<>(Language.policy().names());
    missing.removeAll(parts);
    missing.removeAll(NEVER);
    assertEquals(Set.of(), missing, "parts of a policy that were never written");
  }

  private static void holds(String text, String which) {
    EffectivePolicy before = loaded(text, which);
    String laid = Layout.of(tree(text), SHAPE);
    EffectivePolicy after = loaded(laid, which + ", laid out");
    assertTrue(before.saysTheSameAs(after), () -> which + "\n" + text + "\n-->\n" + laid);
    assertEquals(laid, Layout.of(tree(laid), SHAPE), which);
    assertEquals(Layout.comments(tree(text)), Layout.comments(tree(laid)), which);
  }

  private static YamlNode tree(String text) {
    return new YamlReader()
        .read(SourceText.of("policy.yaml", text))
        .match(
            tree -> tree,
            errors -> {
              throw new AssertionError(text + "\n" + Bench.rendered(errors));
            });
  }

  private static EffectivePolicy loaded(String text, String which) {
    Loaded<EffectivePolicy> loaded = Bench.layered(SourceText.of("policy.yaml", text), List.of());
    return loaded.match(
        policy -> policy,
        errors -> {
          throw new AssertionError(which + "\n" + text + "\n" + Bench.rendered(errors));
        });
  }
}
