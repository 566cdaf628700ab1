package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidemark.decide.Decider;
import org.tidemark.guide.Article;
import org.tidemark.guide.ArticleReader;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.print.CardFiles;
import org.tidemark.print.Cards;
import org.tidemark.print.PolicyViews;
import org.tidemark.print.TemplateFiller;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * The promise: a change to the policy provably reaches the bedside. One cut-off is changed in a
 * copy of the demo policy; every answer, article and card then has the new number, and none has the
 * old one.
 */
class ChangeReachesTheBedsideTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String OLD = "5.0";
  private static final String NEW = "4.5";

  private static final EffectivePolicy BEFORE = hospital("    is: " + OLD);
  private static final EffectivePolicy AFTER = hospital("    is: " + NEW);

  private static EffectivePolicy hospital(String cutOff) {
    String text = Shipped.text(Shipped.HOSPITAL + "/policy.yaml").replace("    is: " + OLD, cutOff);
    PolicyLoader loader = new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography());
    return Shipped.sound(
        Layering.combine(
            Shipped.words().vocabulary(),
            List.of(
                Shipped.floor(),
                Shipped.sound(
                    loader.load(
                        Shipped.sound(new YamlReader().read(SourceText.of("copy.yaml", text))),
                        List.of(Shipped.floor()))))));
  }

  @Test
  void everyArticleShowsTheNewNumberAndNoneTheOld() {
    Map<String, String> before = articles(BEFORE);
    Map<String, String> after = articles(AFTER);
    List<String> showed =
        before.keySet().stream().filter(name -> get(before, name).contains(OLD)).toList();
    assertTrue(showed.contains("ph-cutoff"), showed::toString);
    assertTrue(showed.size() >= 4, showed::toString);
    assertEquals(
        List.of(), after.keySet().stream().filter(name -> get(after, name).contains(OLD)).toList());
    assertEquals(
        List.of(), showed.stream().filter(name -> !get(after, name).contains(NEW)).toList());
  }

  @Test
  void everyCardShowsTheNewNumberAndNoneTheOld() {
    Map<String, String> before = cards(BEFORE);
    Map<String, String> after = cards(AFTER);
    List<String> showed =
        before.keySet().stream().filter(name -> get(before, name).contains(OLD)).toList();
    assertEquals(List.of("before-first-use"), showed);
    assertFalse(get(after, "before-first-use").contains(OLD));
    assertTrue(get(after, "before-first-use").contains(NEW));
    assertEquals(before.keySet(), after.keySet());
  }

  @Test
  void everyAnswerFollows() {
    assertEquals(Outcome.PROCEED, answer(BEFORE, OLD));
    assertEquals(Outcome.HOLD, answer(AFTER, OLD));
    assertEquals(Outcome.PROCEED, answer(AFTER, NEW));
  }

  private static String get(Map<String, String> texts, String name) {
    return java.util.Objects.requireNonNull(texts.get(name), name);
  }

  private static Outcome answer(EffectivePolicy policy, String ph) {
    String text =
        "{population: adult, place: ward, tube-purpose: feeding, tube-state: in, occasion: later-use, any-sign: none, any-change: none,"
            + " any-risk: none, any-warning: none, aspirate: obtained, strip: gastric, film: none, ph-readers: two-agree, checks-since: none, ph: "
            + ph
            + "}";
    Findings findings =
        Shipped.sound(
            FindingsLoader.load(
                Shipped.sound(new YamlReader().read(SourceText.of("findings", text))),
                Shipped.words().vocabulary()));
    return Decider.of(policy, "use").orElseThrow().decide(findings, TODAY).outcome();
  }

  private static Map<String, String> cards(EffectivePolicy policy) {
    Cards cards = new Cards(policy, CardFiles.onClassPath(), TODAY);
    Map<String, String> pages = new TreeMap<>();
    cards
        .names()
        .forEach(
            name ->
                pages.put(
                    name,
                    Shipped.sound(cards.page(name))
                        .html()
                        .replaceAll("(?s)<style>.*?</style>", "")));
    return pages;
  }

  private static Map<String, String> articles(EffectivePolicy policy) {
    TemplateFiller filler = new TemplateFiller();
    ArticleReader reader = new ArticleReader("Tidemark");
    Map<String, String> filled = new TreeMap<>();
    for (Path file : guidance()) {
      Article article =
          Shipped.sound(reader.read(SourceText.of(file.getFileName().toString(), text(file))));
      filled.put(
          article.name(),
          Shipped.sound(filler.fill(article.body().span(), PolicyViews.of(policy))));
    }
    return filled;
  }

  /** The articles as they are written; a jar's folders cannot be listed as simply. */
  private static List<Path> guidance() {
    Path folder = Path.of("../content/src/main/resources/org/tidemark/content/guidance");
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".md")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
